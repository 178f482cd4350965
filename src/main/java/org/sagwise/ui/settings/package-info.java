/** What a person has chosen for the window and how that makes it look, with what the system asks for. */
package org.sagwise.ui.settings;
