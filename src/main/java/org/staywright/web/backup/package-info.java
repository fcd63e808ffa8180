/** Everything as one file, and back. */
package org.staywright.web.backup;
