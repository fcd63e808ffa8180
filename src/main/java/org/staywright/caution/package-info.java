/** Rules from figures to cautions: codes, severities and figures, no text. */
package org.staywright.caution;
