/** The front door: which requests are turned away before anything reads them, who comes, and what he may. */
package org.staywright.web.door;
