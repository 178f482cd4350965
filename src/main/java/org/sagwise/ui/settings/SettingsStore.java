package org.sagwise.ui.settings;

/** Where preferences are kept between one start and the next. */
public interface SettingsStore {

    /** What was kept; fresh preferences where nothing was, or nothing that can be read. */
    Preferences load();

    /** Keeps these. Where that fails, the program goes on: they are not worth an interruption. */
    void save(Preferences preferences);
}
