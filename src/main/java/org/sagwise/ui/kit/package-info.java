/** What every feature of the window is made of: commands and their controls, dialogs, canvases, work behind the scenes. */
package org.sagwise.ui.kit;
