/** Signing in, one's own account and those of others. */
package org.staywright.web.account;
