/** A page's address read as a job, a measurement or zones. */
package org.staywright.web.query;
