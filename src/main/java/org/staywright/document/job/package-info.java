/** Documents about a job: its sheet and the specification of a spring made for it. */
package org.staywright.document.job;
