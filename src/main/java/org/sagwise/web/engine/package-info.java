/** A bench in a reader's hands: what it has been, the button, time, and what there is to read; without a page. */
package org.sagwise.web.engine;
