/**
 * One description of an input or an answer, read by JSON, forms, CSV and the interface document.
 */
package org.staywright.form.schema;
