/** Who did what: who acts in a request, and the changes that the audit holds. */
package org.staywright.web.audit;
