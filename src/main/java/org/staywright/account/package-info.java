/** Who may come in and do what: accounts with their roles, sessions and tokens for programs. */
package org.staywright.account;
