/** The card of a part or a joint: every value that can be set, beside it what is wrong with it. */
package org.sagwise.ui.card;
