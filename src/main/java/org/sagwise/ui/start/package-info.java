/** What meets a person first: the start page, examples to open, notices, and what a crash left behind. */
package org.sagwise.ui.start;
