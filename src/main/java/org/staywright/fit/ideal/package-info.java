/** The spring that would be made for a job, beside the best of stock. */
package org.staywright.fit.ideal;
