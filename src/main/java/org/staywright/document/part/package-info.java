/** The datasheet of one part. */
package org.staywright.document.part;
