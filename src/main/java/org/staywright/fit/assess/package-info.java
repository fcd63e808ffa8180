/** One part judged for a job, plainly: forces, hand, hold, strength and landing in every corner. */
package org.staywright.fit.assess;
