/** What varying a value shows, in words and as charts. */
package org.sagwise.report.vary;
