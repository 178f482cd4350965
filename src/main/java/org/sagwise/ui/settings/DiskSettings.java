package org.sagwise.ui.settings;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.sagwise.file.SettingsFile;

/**
 * Keeps preferences in a file. Trouble with it goes to the log and nowhere else: nobody wants to be
 * stopped in their work because the size of a window was not kept.
 */
public final class DiskSettings implements SettingsStore {

    private static final Logger LOG = Logger.getLogger(DiskSettings.class.getName());
    private static final String NAME = "settings.json";

    private final SettingsFile file;

    /**
     * @param folder where the file is; need not exist
     */
    public DiskSettings(Path folder) {
        this.file = new SettingsFile(folder.resolve(NAME));
    }

    @Override
    public Preferences load() {
        try {
            return new Preferences(file.load());
        } catch (IOException unreadable) {
            LOG.log(Level.WARNING, "the settings cannot be read", unreadable);
            return new Preferences(Map.of());
        }
    }

    @Override
    public void save(Preferences preferences) {
        try {
            file.save(preferences.values());
        } catch (IOException unwritable) {
            LOG.log(Level.WARNING, "the settings cannot be kept", unwritable);
        }
    }
}
