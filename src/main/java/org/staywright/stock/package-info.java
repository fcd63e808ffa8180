/** The range in the database: revisions, the sample range, and the columns that ranking reads. */
package org.staywright.stock;
