/** Time in the window: setting it going, its speed, going back, what it brings, and its curves. */
package org.sagwise.ui.clock;
