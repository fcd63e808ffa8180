/** What moves: a load with one degree of freedom, sampled over its travel. SI throughout. */
@NullMarked
package org.staywright.mechanism;

import org.jspecify.annotations.NullMarked;
