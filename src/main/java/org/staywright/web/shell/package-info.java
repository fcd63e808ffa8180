/** What every page and answer shares: language and units, faults, tokens of requests, limits. */
package org.staywright.web.shell;
