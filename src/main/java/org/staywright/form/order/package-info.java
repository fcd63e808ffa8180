/** Requests and answers about what to order. */
package org.staywright.form.order;
