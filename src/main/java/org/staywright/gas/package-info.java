/** Nitrogen as a real gas: states, isotherms and isentropes. SI throughout. */
package org.staywright.gas;
