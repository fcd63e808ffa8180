/** Units, bounds and faults: what every number that crosses a boundary needs. */
package org.staywright.unit;
