package org.sagwise.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be held of the download for every desktop without the desktops. */
class AnywhereTest {

    /** A heap that stays close to what is in use, and is bounded (docs/performance.md). */
    private static final String HEAP =
            "-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms72m -Xmn16m -Xmx512m -XX:MinHeapFreeRatio=10 -XX:MaxHeapFreeRatio=20";

    private static final Path FOLDER = Path.of("assets", "anywhere");

    private static String read(String name) throws IOException {
        return Files.readString(FOLDER.resolve(name), StandardCharsets.UTF_8);
    }

    private static Set<String> all(String pattern, String text) {
        Set<String> found = new TreeSet<>();
        Matcher matcher = Pattern.compile(pattern).matcher(text);
        while (matcher.find()) {
            found.add(matcher.group(1));
        }
        return found;
    }

    /** The command processor of Windows loses labels in files with the line ends of Unix. */
    @Test
    void windowsScript_hasItsSystemsLineEndsAndOnlyAscii() throws IOException {
        String script = read("sagwise.cmd");
        assertEquals(script, script.replaceAll("\\r?\\n", "\r\n"));
        assertTrue(script.chars().allMatch(letter -> letter < 0x80));
    }

    @Test
    void windowsScript_everyLabelThatIsGoneTo_isThere() throws IOException {
        String script = read("sagwise.cmd");
        Set<String> labels = all("(?m)^:(\\w+)", script);
        assertEquals(Set.of(), minus(all("goto (\\w+)", script), labels));
        assertEquals(Set.of(), minus(labels, all("goto (\\w+)", script)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"sagwise", "Sagwise.command"})
    void unixScripts_haveTheirSystemsLineEndsAndMayBeRun(String name) throws IOException {
        assertTrue(read(name).startsWith("#!/bin/sh\n"));
        assertFalse(read(name).contains("\r"));
        assertTrue(Files.isExecutable(FOLDER.resolve(name)));
    }

    /** A folder that a script names and the build does not fill would fail on that system alone. */
    @Test
    void natives_ofEverySystem_areAskedForAndBuilt() throws IOException {
        Set<String> built = all("<outputDirectory>\\$\\{dist\\.anywhere}/lib/([\\w-]+)</outputDirectory>", pom());
        Set<String> asked = all("echo (linux[\\w-]*|mac[\\w-]*) ;;", read("sagwise"));
        asked.addAll(all("lib\\\\(win)\\\\", read("sagwise.cmd")));

        assertEquals(Set.of("linux", "linux-aarch64", "mac", "mac-aarch64", "win"), built);
        assertEquals(built, asked);
    }

    @Test
    void scripts_allStartTheSameProgramWithTheSameBounds() throws IOException {
        for (String name : new String[] {"sagwise", "sagwise.cmd"}) {
            assertTrue(read(name).contains("org.sagwise.app.Main"), name);
            assertTrue(read(name).contains(HEAP), name);
        }
        assertTrue(Files.readString(Path.of("sagwise")).contains(HEAP), "the launcher of the sources");
        for (String option : HEAP.split(" ")) {
            assertTrue(pom().contains("<argument>" + option + "</argument>"), "the packaged program: " + option);
        }
    }

    private static String pom() throws IOException {
        return Files.readString(Path.of("pom.xml"));
    }

    private static Set<String> minus(Set<String> all, Set<String> known) {
        Set<String> rest = new TreeSet<>(all);
        rest.removeAll(known);
        return rest;
    }
}
