/** Where volts and watts go, and each cell against its limit. */
package org.sagwise.ui.ledger;
