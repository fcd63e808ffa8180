/** Requests and answers about mounts to be found. */
package org.staywright.form.mounts;
