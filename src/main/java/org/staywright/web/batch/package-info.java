/** Many jobs judged in the background. */
package org.staywright.web.batch;
