/** Figures, from a page of our own to SVG and PDF alike: paths, plots, dimensions. */
package org.staywright.document.draw;
