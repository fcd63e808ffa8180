/** What moves: a load with one degree of freedom, sampled over its travel. SI throughout. */
package org.staywright.mechanism;
