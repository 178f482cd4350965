/** A plot in the window: read off by hand and keyboard, and saved as a picture or a table. */
package org.sagwise.ui.plot;
