/** What swapping an old spring calls for. */
package org.staywright.caution.replace;
