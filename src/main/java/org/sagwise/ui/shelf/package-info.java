/** The shelf: parts to take to the bench, by family, with a search. */
package org.sagwise.ui.shelf;
