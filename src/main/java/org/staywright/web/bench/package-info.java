/** A job described and the stock ranked for it. */
package org.staywright.web.bench;
