package org.sagwise.file;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;

/** The folders that each operating system has for what a program keeps for its user. */
public final class UserFolders {

    /** System property that names another folder for settings, for tests and for locked-down machines. */
    public static final String CONFIG_OVERRIDE = "sagwise.config";

    /** System property that names another folder for data; where only settings have one, it is that. */
    public static final String DATA_OVERRIDE = "sagwise.data";

    private final Properties properties;
    private final Map<String, String> environment;

    public UserFolders(Properties properties, Map<String, String> environment) {
        this.properties = properties;
        this.environment = Map.copyOf(environment);
    }

    /** Those of this machine. */
    public static UserFolders here() {
        return new UserFolders(System.getProperties(), System.getenv());
    }

    /** Where settings are kept; it need not exist yet. */
    public Path config() {
        return override(CONFIG_OVERRIDE).orElseGet(() -> of("XDG_CONFIG_HOME", Path.of(".config")));
    }

    /** Where a person's data are kept; it need not exist yet. */
    public Path data() {
        return override(DATA_OVERRIDE)
                .or(() -> override(CONFIG_OVERRIDE))
                .orElseGet(() -> of("XDG_DATA_HOME", Path.of(".local", "share")));
    }

    private Optional<Path> override(String property) {
        String folder = properties.getProperty(property, "");
        return folder.isBlank() ? Optional.empty() : Optional.of(Path.of(folder));
    }

    private Path of(String variable, Path usual) {
        Path home = Path.of(properties.getProperty("user.home", "."));
        String system = properties.getProperty("os.name", "").toLowerCase(Locale.ROOT);
        if (system.startsWith("windows")) {
            return set("APPDATA")
                    .orElse(home.resolve("AppData").resolve("Roaming"))
                    .resolve("Sagwise");
        }
        if (system.startsWith("mac")) {
            return home.resolve("Library").resolve("Application Support").resolve("Sagwise");
        }
        // XDG Base Directory Specification: a relative path in the variable is to be ignored.
        return set(variable)
                .filter(Path::isAbsolute)
                .orElse(home.resolve(usual))
                .resolve("sagwise");
    }

    private Optional<Path> set(String name) {
        return Optional.ofNullable(environment.get(name))
                .filter(value -> !value.isBlank())
                .map(Path::of);
    }
}
