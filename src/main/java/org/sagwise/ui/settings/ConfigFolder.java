package org.sagwise.ui.settings;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** Where settings are kept: the folder that each operating system has for it. */
public final class ConfigFolder {

    /** System property that names another folder, for tests and for locked-down machines. */
    public static final String OVERRIDE = "sagwise.config";

    private ConfigFolder() {}

    /** The folder on this machine; it need not exist yet. */
    public static Path here() {
        return of(System.getProperties(), System.getenv());
    }

    static Path of(Properties properties, Map<String, String> environment) {
        String override = properties.getProperty(OVERRIDE, "");
        if (!override.isBlank()) {
            return Path.of(override);
        }
        Path home = Path.of(properties.getProperty("user.home", "."));
        String system = properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return set(environment, "APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Sagwise");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Sagwise");
        }
        // XDG Base Directory Specification: a relative path in the variable is to be ignored.
        return set(environment, "XDG_CONFIG_HOME")
                .filter(Path::isAbsolute)
                .orElse(home.resolve(".config"))
                .resolve("sagwise");
    }

    private static Optional<Path> set(Map<String, String> environment, String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
