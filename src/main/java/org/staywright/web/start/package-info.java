/** Where people begin. */
package org.staywright.web.start;
