/** What pushes: a spring as a force over its length, and what it may carry. SI throughout. */
@NullMarked
package org.staywright.spring;

import org.jspecify.annotations.NullMarked;
