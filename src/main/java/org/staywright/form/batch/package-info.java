/** A batch of jobs as it is told. */
package org.staywright.form.batch;
