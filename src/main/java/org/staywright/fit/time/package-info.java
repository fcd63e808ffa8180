/** What a fit does as it moves, and how sure it is when everything strays. */
package org.staywright.fit.time;
