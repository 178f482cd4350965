package org.sagwise.ui.settings;

/** Whether the bench can be heard. */
public enum Sound {
    OFF,
    ON
}
