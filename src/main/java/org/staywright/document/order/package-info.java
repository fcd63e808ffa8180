/** What to order: parts list in every format, request for quotation, lines for a mail. */
package org.staywright.document.order;
