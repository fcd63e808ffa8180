/** JSON and form fields to records of the core and back, every fault with its place. */
package org.staywright.form;
