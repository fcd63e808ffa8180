/**
 * What is asked: a load on its mechanism, the requirements one by one, and the terms of an answer.
 */
@NullMarked
package org.staywright.fit.job;

import org.jspecify.annotations.NullMarked;
