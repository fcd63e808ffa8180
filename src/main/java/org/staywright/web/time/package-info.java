/** One part as it moves, and how sure it is. */
package org.staywright.web.time;
