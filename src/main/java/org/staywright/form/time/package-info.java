/** Requests and answers about motion and chance. */
package org.staywright.form.time;
