/** The front door: which requests are turned away before anything reads them. */
package org.staywright.web.door;
