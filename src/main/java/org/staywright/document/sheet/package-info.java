/** Paper: the grid, type, running heads and remarks of every document. */
package org.staywright.document.sheet;
