/** One field of a form: what was typed, what is wrong with it, what is around it. */
package org.staywright.web.field;
