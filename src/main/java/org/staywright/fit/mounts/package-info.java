/** Mounts and part found together in zones. */
package org.staywright.fit.mounts;
