package org.sagwise.ui.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.sagwise.picture.look.Theme;

class SystemLooksTest {

    /** Answers only what is asked with all the words of the key, as the real tools print it. */
    private static SystemLooks on(String system, Map<String, String> answers) {
        return SystemLooks.of(system, command -> answer(answers, command));
    }

    private static Optional<String> answer(Map<String, String> answers, List<String> command) {
        return Optional.ofNullable(answers.get(command.get(command.size() - 1)));
    }

    @Test
    void of_silentSystem_isLightAndMoving() {
        for (String system : List.of("Linux", "Windows 11", "Mac OS X", "FreeBSD")) {
            assertEquals(SystemLooks.UNKNOWN, on(system, Map.of()));
        }
    }

    @Test
    void of_freeDesktop_readsSchemeContrastAndAnimations() {
        assertEquals(
                new SystemLooks(Theme.DARK, Motion.REDUCED),
                on(
                        "Linux",
                        Map.of(
                                "color-scheme", "'prefer-dark'\n",
                                "high-contrast", "false\n",
                                "enable-animations", "false\n")));
        assertEquals(
                Theme.HIGH_CONTRAST,
                on("Linux", Map.of("high-contrast", "true\n")).theme());
        assertEquals(
                Theme.LIGHT, on("Linux", Map.of("color-scheme", "'default'\n")).theme());
    }

    @Test
    void of_windows_readsTheRegistry() {
        String dark = "\r\n    AppsUseLightTheme    REG_DWORD    0x0\r\n\r\n";
        String light = "\r\n    AppsUseLightTheme    REG_DWORD    0x1\r\n\r\n";
        assertEquals(
                Theme.DARK, on("Windows 11", Map.of("AppsUseLightTheme", dark)).theme());
        assertEquals(
                Theme.LIGHT,
                on("Windows 11", Map.of("AppsUseLightTheme", light)).theme());
        assertEquals(
                Theme.HIGH_CONTRAST,
                on("Windows 11", Map.of("Flags", "    Flags    REG_SZ    127\r\n"))
                        .theme());
        assertEquals(
                Theme.LIGHT,
                on("Windows 11", Map.of("Flags", "    Flags    REG_SZ    126\r\n"))
                        .theme());
    }

    @Test
    void of_mac_readsTheDefaults() {
        assertEquals(
                new SystemLooks(Theme.DARK, Motion.REDUCED),
                on("Mac OS X", Map.of("AppleInterfaceStyle", "Dark\n", "reduceMotion", "1\n")));
        assertEquals(
                Theme.HIGH_CONTRAST,
                on("Mac OS X", Map.of("increaseContrast", "1\n")).theme());
    }

    @Test
    void on_choices_overrideTheSystem() {
        assertEquals(Theme.DARK, LooksChoice.SYSTEM.on(Theme.DARK));
        assertEquals(Theme.LIGHT, LooksChoice.LIGHT.on(Theme.DARK));
    }
}
