/** Parts or jobs side by side. */
package org.staywright.web.compare;
