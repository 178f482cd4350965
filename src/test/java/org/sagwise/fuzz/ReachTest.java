package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.LessonLibrary;
import org.sagwise.file.LessonReader;
import org.sagwise.file.LessonReading;
import org.sagwise.file.LessonSource;
import org.sagwise.file.ShareText;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.HandoutHtml;
import org.sagwise.report.handout.HandoutMaker;
import org.sagwise.report.handout.HandoutPdf;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** No document, whatever stands in it, makes the program read a file or ask the network. */
class ReachTest {

    @Test
    void scenario_fullOfAddresses_makesAPostWithoutAny() {
        String words = """
                ![x](http://192.0.2.1/a.png) [y](file:///etc/passwd)
                <img src=http://192.0.2.1/b> <a href='http://192.0.2.1'>c</a>
                &#x68;ttp://192.0.2.1 url(//192.0.2.1)
                """;
        Scenario scenario = Answers.READER
                .read(DemoScenarios.bytes("thin-wire"))
                .scenario()
                .orElseThrow()
                .withTitle(words)
                .withAbout(words);

        String page = ExplainedPost.write(
                Moment.start(Assessment.of(scenario, Answers.CATALOGUE)),
                PostFormat.HTML,
                ShareText::of,
                Locale.ENGLISH,
                Signs.PRINT);

        assertNothingToFetch(page);
    }

    private static void assertNothingToFetch(String page) {
        String markup = page.replaceAll(">[^<]*<", "><").replaceAll("aria-label=\"[^\"]*\"", "");
        assertFalse(markup.matches("(?s).*(src=|href=\"(?!#)|url\\((?!['\"]?#)|@import|srcset|data=).*"), markup);
        assertTrue(page.contains("default-src 'none'"));
    }

    @Test
    void lesson_fullOfAddresses_makesAHandoutWithoutAny() {
        LessonSource spoilt = edited("Now the row.", "![x](http://192.0.2.1/a.png) [y](http://192.0.2.1) <b>z</b>");
        LessonReading reading = new LessonReader(Answers.CATALOGUE).read(spoilt);
        assertEquals(List.of(), reading.faults());

        String page = HandoutHtml.write(List.of(HandoutMaker.make(
                reading.lesson().orElseThrow(), Answers.CATALOGUE, Locale.ENGLISH, Handout.Kind.SHEET)));

        assertTrue(page.contains("y (http://192.0.2.1)"), "the address can be read");
        assertNothingToFetch(page);
    }

    @ParameterizedTest
    @ValueSource(strings = {"> ", "- ", "1. ", "[", "![", "**a _b ", "<b>"})
    void lesson_whoseTextNestsWithoutEnd_isPrintedAllTheSame(String piece) throws IOException {
        LessonSource spoilt = edited("Now the row.", "a" + "\\n" + piece.repeat(2500) + "b");
        LessonReading reading = new LessonReader(Answers.CATALOGUE).read(spoilt);
        assertEquals(List.of(), reading.faults());
        Handout sheet = HandoutMaker.make(
                reading.lesson().orElseThrow(), Answers.CATALOGUE, Locale.ENGLISH, Handout.Kind.SHEET);

        Effort.bounded(() -> HandoutHtml.write(List.of(sheet)));
        HandoutPdf.write(List.of(sheet), OutputStream.nullOutputStream());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../01-close-the-ring/start.sagwise.json",
                "/etc/passwd",
                "file:///etc/passwd",
                "http://192.0.2.1/a.sagwise.json",
                "..%2fstart.sagwise.json",
                "C:\\start.sagwise.json",
                "!include start.sagwise.json",
                "!!java.io.File [start.sagwise.json]"
            })
    void lesson_thatNamesAFileElsewhere_asksForNothingOutsideItsFolder(String name) throws IOException {
        List<String> asked = new ArrayList<>();
        LessonSource spoilt = edited("file: side.sagwise.json", "file: " + name);
        LessonSource watched = new LessonSource() {
            @Override
            public String id() {
                return spoilt.id();
            }

            @Override
            public Optional<byte[]> file(String file) throws IOException {
                asked.add(file);
                return spoilt.file(file);
            }
        };

        LessonReading reading = new LessonReader(Answers.CATALOGUE).read(watched);

        assertFalse(reading.faults().isEmpty());
        assertTrue(
                asked.stream().allMatch(it -> it.matches("[A-Za-z0-9_-]+(\\.sagwise)?\\.\\w+")),
                () -> asked.toString());
    }

    private static LessonSource edited(String from, String to) {
        LessonSource sound = LessonLibrary.source("06-same-watts");
        return new LessonSource() {
            @Override
            public String id() {
                return sound.id();
            }

            @Override
            public Optional<byte[]> file(String name) throws IOException {
                Optional<byte[]> bytes = sound.file(name);
                if (!name.equals(LessonReader.FILE)) {
                    return bytes;
                }
                String text = new String(bytes.orElseThrow(), StandardCharsets.UTF_8);
                assertTrue(text.contains(from), from);
                return Optional.of(text.replace(from, to).getBytes(StandardCharsets.UTF_8));
            }
        };
    }
}
