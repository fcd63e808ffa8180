/** Charts and side views on pages and as files. */
package org.staywright.web.chart;
