/** Text on the clipboard, for every feature that copies or pastes. */
package org.sagwise.ui.copy;
