/** The spring that would be made for a job, beside the best of stock. */
@NullMarked
package org.staywright.fit.ideal;

import org.jspecify.annotations.NullMarked;
