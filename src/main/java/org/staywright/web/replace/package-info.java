/** A replacement, one question at a time. */
package org.staywright.web.replace;
