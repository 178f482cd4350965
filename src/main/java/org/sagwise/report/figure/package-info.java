/** Benches as figures among text: on a page of HTML and on sheets of paper. */
package org.sagwise.report.figure;
