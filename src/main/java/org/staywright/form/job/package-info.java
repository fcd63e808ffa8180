/** A job as it comes in and goes out. */
package org.staywright.form.job;
