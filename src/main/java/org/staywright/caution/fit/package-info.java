/** What a part calls for in its job, and all rules in one list, the nearest harm first. */
package org.staywright.caution.fit;
