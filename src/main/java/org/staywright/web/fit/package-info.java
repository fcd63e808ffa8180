/** One part for a job: how it fits, why it is where it is, what would be made instead. */
package org.staywright.web.fit;
