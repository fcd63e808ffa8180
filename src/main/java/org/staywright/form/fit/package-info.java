/** The answers about a fit. */
package org.staywright.form.fit;
