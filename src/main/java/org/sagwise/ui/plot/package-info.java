/** Curves over time: their axes, their lines, and reading them off. Knows nothing of a bench. */
package org.sagwise.ui.plot;
