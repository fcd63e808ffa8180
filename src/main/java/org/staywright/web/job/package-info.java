/** Saved jobs and what to order for them. */
package org.staywright.web.job;
