/** Parts and end fittings, one row or one object each. */
package org.staywright.form.part;
