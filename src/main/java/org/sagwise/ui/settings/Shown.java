package org.sagwise.ui.settings;

/** Whether a part of the window is shown. */
public enum Shown {
    SHOWN,
    HIDDEN
}
