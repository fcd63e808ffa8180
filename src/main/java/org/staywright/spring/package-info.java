/** What pushes: a spring as a force over its length, and what it may carry. SI throughout. */
package org.staywright.spring;
