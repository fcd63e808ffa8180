/** A range of one's own: imported, listed by revision, restored. */
package org.staywright.web.stock;
