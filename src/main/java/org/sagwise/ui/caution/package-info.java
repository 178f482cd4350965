/** Cautions about the drawn circuit: cards, and a strip across the window for danger. */
package org.sagwise.ui.caution;
