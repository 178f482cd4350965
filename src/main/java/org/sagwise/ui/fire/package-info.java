/** The fire button: by mouse, by space bar, by latch. */
package org.sagwise.ui.fire;
