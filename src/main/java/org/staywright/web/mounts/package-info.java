/** Mounts found in zones, and the centre of mass. */
package org.staywright.web.mounts;
