/** What every request and refusal over HTTP shares. */
package org.staywright.web.api.request;
