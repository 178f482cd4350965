package org.sagwise.ui.prefs;

/** Whether a part of the window is shown. */
public enum Shown {
    SHOWN,
    HIDDEN
}
