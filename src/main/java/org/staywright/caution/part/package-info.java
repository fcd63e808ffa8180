/** What a part calls for wherever it is used. */
package org.staywright.caution.part;
