/** The note for who swaps a spring. */
package org.staywright.document.replace;
