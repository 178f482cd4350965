package org.sagwise.fuzz;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(location -> !location.contains(testFolder()))
            .importPackages("org.sagwise");

    /** Who opens files: those that are given a name by a person or by the system, not by a file. */
    private static final Set<String> OPENERS = Set.of(
            "AtomicFile",
            "LessonFolder",
            "LessonProgress",
            "LessonSource",
            "ScenarioFiles",
            "ScenarioReader",
            "SettingsFile");

    private static final DescribedPredicate<JavaClass> FILES = describe(
            "open files",
            it -> it.isEquivalentTo(java.nio.file.Files.class)
                    || it.isAssignableTo(java.io.FileInputStream.class)
                    || it.isAssignableTo(java.io.FileReader.class)
                    || it.isAssignableTo(java.io.RandomAccessFile.class)
                    || it.isAssignableTo(java.nio.channels.FileChannel.class));

    private static final DescribedPredicate<JavaClass> NETWORK = describe(
            "reach the network",
            it -> it.getPackageName().startsWith("java.net")
                            && !Set.of("URL", "URI", "URISyntaxException").contains(it.getSimpleName())
                    || it.getPackageName().startsWith("javax.net")
                    || it.getPackageName().startsWith("java.rmi")
                    || it.getPackageName().startsWith("javax.naming"));

    @Test
    void files_areOpenedByFewAlone() {
        noClasses()
                .that()
                .resideInAnyPackage(
                        "org.sagwise.quantity..",
                        "org.sagwise.part..",
                        "org.sagwise.scenario..",
                        "org.sagwise.network..",
                        "org.sagwise.reading..",
                        "org.sagwise.hazard..",
                        "org.sagwise.run..",
                        "org.sagwise.plan..",
                        "org.sagwise.lesson..",
                        "org.sagwise.file..",
                        "org.sagwise.picture..",
                        "org.sagwise.report..")
                .and(describe("are none of the openers", it -> !OPENERS.contains(outermost(it))))
                .should()
                .dependOnClassesThat(FILES)
                .because("what stands in a document must not name what is read next")
                .check(PROGRAM);
    }

    private static String outermost(JavaClass it) {
        String name = it.getName().substring(it.getPackageName().length() + 1);
        return name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
    }

    /** Where this class was compiled to, whichever tool compiled it. */
    private static String testFolder() {
        return ReachTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath();
    }

    @Test
    void network_isReachedByNobody() {
        noClasses()
                .should()
                .dependOnClassesThat(NETWORK)
                .orShould()
                .callMethod(java.net.URL.class, "openStream")
                .orShould()
                .callMethod(java.net.URL.class, "openConnection")
                .orShould()
                .callMethod(java.net.URL.class, "getContent")
                .because("a file from a stranger must not tell anybody that it was opened")
                .check(PROGRAM);
    }

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
