/** What runs in the browser: compiled to script, and the only code here that touches a page. Nothing on a JVM calls it. */
package org.sagwise.web.page;
