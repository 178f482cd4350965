/** What makes things move in a window. */
package org.sagwise.ui.motion;
