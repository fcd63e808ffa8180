/** Pages and REST: translate, never compute; the only package that knows HTTP. */
package org.staywright.web;
