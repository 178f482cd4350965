package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The reader without a library against the one that stands on Jackson. */
class PlainJsonTest {

    static Stream<Path> files() throws IOException {
        try (Stream<Path> demos = Files.walk(Path.of("demo-scenarios"));
                Stream<Path> lessons = Files.walk(Path.of("lessons"));
                Stream<Path> catalogue = Files.walk(Path.of("src/main/resources/org/sagwise/catalogue"))) {
            return Stream.of(demos, lessons, catalogue)
                    .flatMap(files -> files)
                    .filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList()
                    .stream();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void read_aFile_givesTheSameTree(Path file) throws IOException {
        String text = Files.readString(file);

        assertEquals(JsonDocument.read(text), PlainJson.read(text));
    }

    /** Cut anywhere, or with any sign in place of another: broken for the one exactly where for the other. */
    @Test
    void read_aSpoiltFile_isRefusedWhereTheOtherRefuses() throws IOException {
        String text = Files.readString(files().findFirst().orElseThrow());
        Random random = new Random(7);
        String signs = "{}[]\":,0123456789.eE-+tfn\\/ux \n\r\t\u0001é";
        for (int i = 0; i < 4000; i++) {
            StringBuilder spoilt = new StringBuilder(text);
            for (int spot = random.nextInt(3); spot >= 0; spot--) {
                spoilt.setCharAt(random.nextInt(spoilt.length()), signs.charAt(random.nextInt(signs.length())));
            }
            String one = i % 4 == 0 ? text.substring(0, random.nextInt(text.length())) : spoilt.toString();
            Document ours = PlainJson.read(one);
            Document theirs = JsonDocument.read(one);

            assertEquals(theirs.root(), ours.root(), one);
            assertEquals(theirs.findings().isEmpty(), ours.findings().isEmpty(), one);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                " ",
                "1 2",
                "nul",
                "01",
                "-",
                "1.",
                "1e",
                "\"a",
                "\"\\x\"",
                "\"\\u12g4\"",
                "\"\n\"",
                "[1,]",
                "[1 2]",
                "{\"a\" 1}",
                "{a:1}",
                "{\"a\":1,}",
                "{\"a\":1,\"a\":2}",
                "[",
                "{",
                "]",
                "\u00a0",
                "1\u0000"
            })
    void read_whatIsNoJson_isRefusedByBoth(String text) {
        assertTrue(!JsonDocument.read(text).findings().isEmpty());
        assertTrue(!PlainJson.read(text).findings().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "-0.0e+1",
                "[]",
                "{}",
                "\"\\ud83d\\ude00 \\\"\\\\\\/\\b\\f\\n\\r\\t\"",
                "[true,false,null]",
                "{\r\n\"x\":{\"a\":[1,{}]},\r\"b\":\n[ ]}"
            })
    void read_whatIsJson_givesTheSameTree(String text) {
        assertEquals(JsonDocument.read(text), PlainJson.read(text));
    }

    @Test
    void read_deeperThanAllowed_isRefusedByBoth() {
        String deep = "[".repeat(33) + "]".repeat(33);

        assertEquals(
                JsonDocument.read(deep).findings().get(0).problem(),
                PlainJson.read(deep).findings().get(0).problem());
        assertTrue(PlainJson.read("[".repeat(32) + "]".repeat(32)).findings().isEmpty());
    }

    @Test
    void scenarioReader_withoutALibrary_opensTheSameScenario() throws IOException {
        for (Path file :
                files().filter(it -> it.toString().endsWith(".sagwise.json")).toList()) {
            byte[] bytes = Files.readString(file).getBytes(StandardCharsets.UTF_8);

            assertEquals(
                    new ScenarioReader(CatalogueLoader.builtIn()).read(bytes),
                    ScenarioReader.bare(CatalogueLoader.bare()).read(bytes));
        }
    }
}
