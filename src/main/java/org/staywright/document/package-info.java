/** What is drawn and printed: one drawing model for screen and paper, and the documents. */
package org.staywright.document;
