/** The least change that makes a near part fit, and what contradicts itself. */
package org.staywright.fit.clear;
