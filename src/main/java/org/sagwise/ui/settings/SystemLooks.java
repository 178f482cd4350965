package org.sagwise.ui.settings;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import org.sagwise.picture.look.Theme;

/**
 * What the system looks like, as far as it tells.
 *
 * <p>JavaFX 21 has no way to ask, so each system's own tool is asked. Where the tool is missing or
 * silent, the answer is light and moving.
 *
 * @param theme light, dark or high contrast
 * @param motion whether the person asked the whole system for less motion
 */
public record SystemLooks(Theme theme, Motion motion) {

    /** What is taken for granted where the system does not tell. */
    public static final SystemLooks UNKNOWN = new SystemLooks(Theme.LIGHT, Motion.FULL);

    /** A question to the system and the answer that means yes. */
    private record Clue(List<String> command, Predicate<String> yes) {

        boolean holds(Function<List<String>, Optional<String>> shell) {
            return shell.apply(command).filter(yes).isPresent();
        }
    }

    /** The three questions that one kind of system answers. */
    private record Clues(Clue contrast, Clue dark, Clue still) {}

    private static final Clues WINDOWS = new Clues(
            registry("HKCU\\Control Panel\\Accessibility\\HighContrast", "Flags", SystemLooks::lastWordIsOdd),
            registry(
                    "HKCU\\Software\\Microsoft\\Windows\\CurrentVersion\\Themes\\Personalize",
                    "AppsUseLightTheme",
                    answer -> answer.endsWith("0x0")),
            registry("HKCU\\Control Panel\\Desktop\\WindowMetrics", "MinAnimate", answer -> answer.endsWith(" 0")));

    private static final Clues MAC = new Clues(
            new Clue(List.of("defaults", "read", "com.apple.universalaccess", "increaseContrast"), "1"::equals),
            new Clue(List.of("defaults", "read", "-g", "AppleInterfaceStyle"), "dark"::equals),
            new Clue(List.of("defaults", "read", "com.apple.universalaccess", "reduceMotion"), "1"::equals));

    private static final Clues FREE_DESKTOP = new Clues(
            desktop("org.gnome.desktop.a11y.interface", "high-contrast", "true"::equals),
            desktop("org.gnome.desktop.interface", "color-scheme", "'prefer-dark'"::equals),
            desktop("org.gnome.desktop.interface", "enable-animations", "false"::equals));

    /**
     * Asks a system.
     *
     * @param systemName as in the system property {@code os.name}
     * @param shell runs a command and gives what it printed; empty if it failed or is not there
     */
    public static SystemLooks of(String systemName, Function<List<String>, Optional<String>> shell) {
        Function<List<String>, Optional<String>> plain =
                command -> shell.apply(command).map(s -> s.strip().toLowerCase(Locale.ROOT));
        Clues clues = cluesOf(systemName.toLowerCase(Locale.ROOT));
        return new SystemLooks(
                clues.contrast().holds(plain)
                        ? Theme.HIGH_CONTRAST
                        : clues.dark().holds(plain) ? Theme.DARK : Theme.LIGHT,
                clues.still().holds(plain) ? Motion.REDUCED : Motion.FULL);
    }

    private static Clues cluesOf(String system) {
        if (system.startsWith("windows")) {
            return WINDOWS;
        }
        return system.startsWith("mac") ? MAC : FREE_DESKTOP;
    }

    private static Clue registry(String folder, String value, Predicate<String> yes) {
        return new Clue(List.of("reg", "query", folder, "/v", value), yes);
    }

    private static Clue desktop(String schema, String key, Predicate<String> yes) {
        return new Clue(List.of("gsettings", "get", schema, key), yes);
    }

    /** The flags of Windows' high contrast are a number in decimals; its lowest bit is "on". */
    private static boolean lastWordIsOdd(String answer) {
        char last = answer.isEmpty() ? ' ' : answer.charAt(answer.length() - 1);
        return Character.isDigit(last) && (last - '0') % 2 == 1;
    }
}
