package org.sagwise.ui.settings;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.sagwise.file.UserFolders;

/** Where settings are kept: the folder that each operating system has for it. */
public final class ConfigFolder {

    /** System property that names another folder, for tests and for locked-down machines. */
    public static final String OVERRIDE = UserFolders.CONFIG_OVERRIDE;

    private ConfigFolder() {}

    /** The folder on this machine; it need not exist yet. */
    public static Path here() {
        return UserFolders.here().config();
    }

    static Path of(Properties properties, Map<String, String> environment) {
        return new UserFolders(properties, environment).config();
    }
}
