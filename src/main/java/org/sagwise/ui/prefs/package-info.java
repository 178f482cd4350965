/** What a person chose, kept from one start to the next. */
package org.sagwise.ui.prefs;
