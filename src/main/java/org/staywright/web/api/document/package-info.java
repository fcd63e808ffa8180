/** The interface document. */
package org.staywright.web.api.document;
