/** What the numbers of the bench say: cautions with their cures, ledger, limits and the table of readings. */
package org.sagwise.ui.analysis;
