/** What a mechanism or a spring looks like from the side. */
package org.staywright.document.view;
