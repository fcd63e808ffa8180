/** What can be bought: springs and end fittings, their offers, and the whole range as columns. */
package org.staywright.part;
