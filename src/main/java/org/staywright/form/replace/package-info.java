/** Measurements of an old spring, and what may replace it. */
package org.staywright.form.replace;
