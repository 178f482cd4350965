package org.sagwise.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;

class ConfigFolderTest {

    private static final Path HOME = Path.of("home").resolve("ana");

    private static Properties on(String system) {
        Properties properties = new Properties();
        properties.setProperty("os.name", system);
        properties.setProperty("user.home", HOME.toString());
        return properties;
    }

    @Test
    void of_eachSystem_isItsFolderForSettings() {
        assertEquals(HOME.resolve(".config").resolve("sagwise"), ConfigFolder.of(on("Linux"), Map.of()));
        assertEquals(
                HOME.resolve("Library").resolve("Application Support").resolve("Sagwise"),
                ConfigFolder.of(on("Mac OS X"), Map.of()));
        assertEquals(
                Path.of("roaming").resolve("Sagwise"), ConfigFolder.of(on("Windows 11"), Map.of("APPDATA", "roaming")));
    }

    /** XDG Base Directory Specification 0.8: all paths set in these variables must be absolute. */
    @Test
    void of_xdgConfigHome_isTakenOnlyIfAbsolute() {
        Path absolute = Path.of("settings").toAbsolutePath();
        assertEquals(
                absolute.resolve("sagwise"),
                ConfigFolder.of(on("Linux"), Map.of("XDG_CONFIG_HOME", absolute.toString())));
        assertEquals(
                HOME.resolve(".config").resolve("sagwise"),
                ConfigFolder.of(on("Linux"), Map.of("XDG_CONFIG_HOME", "settings")));
    }

    @Test
    void of_override_wins() {
        Properties properties = on("Linux");
        properties.setProperty(ConfigFolder.OVERRIDE, "elsewhere");

        assertEquals(Path.of("elsewhere"), ConfigFolder.of(properties, Map.of()));
    }
}
