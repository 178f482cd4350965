/** From what a meter shows at a real bench to a bench in the window. */
package org.sagwise.ui.measured;
