/** Fields of a form and their groups: what was typed, what is wrong with it, what is around it. */
package org.staywright.web.field;
