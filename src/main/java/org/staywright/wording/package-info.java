/** Text and number formats of everything a person reads: the only place with sentences. */
package org.staywright.wording;
