/** What is asked about an order. */
package org.staywright.form.order;
