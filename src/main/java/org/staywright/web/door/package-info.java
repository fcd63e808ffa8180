/**
 * The front door: which requests are turned away before anything reads them, how many there may be,
 * who comes and what he may, and what every answer says of its use.
 */
package org.staywright.web.door;
