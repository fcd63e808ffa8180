/** Parts found by their measures, and one in full. */
package org.staywright.web.part;
