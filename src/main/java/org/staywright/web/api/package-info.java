/** REST under /api/v1: read with {@code form}, ask the core, write with {@code form}. */
package org.staywright.web.api;
