/**
 * What a reading does when a value changes: over a range, over two, and where parts are not as
 * printed. Pure; the same for window and command line.
 */
package org.sagwise.plan.vary;
