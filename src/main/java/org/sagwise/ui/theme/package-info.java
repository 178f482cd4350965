/** Colours and style sheets, and what the system is set to. */
package org.sagwise.ui.theme;
