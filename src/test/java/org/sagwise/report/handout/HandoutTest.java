package org.sagwise.report.handout;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.LessonLibrary;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.LessonFixture;
import org.sagwise.lesson.Step;
import org.sagwise.report.handout.Handout.Kind;
import org.xml.sax.InputSource;

class HandoutTest {

    static List<String> ids() {
        return LessonLibrary.ids();
    }

    private static Handout make(String id, Locale locale, Kind kind) {
        Lesson lesson = LessonFixture.builtIn(id);
        return HandoutMaker.make(lesson, LessonFixture.CATALOGUE, locale, kind);
    }

    private static String pdfText(Handout handout) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        HandoutPdf.write(List.of(handout), bytes);
        try (PDDocument document = Loader.loadPDF(bytes.toByteArray())) {
            return new PDFTextStripper().getText(document).replace('\u00a0', ' ');
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void sheet_ofLesson_givesNoAnswerAway(String id) {
        Handout sheet = make(id, Locale.ENGLISH, Kind.SHEET);

        for (Handout.Item item : sheet.items()) {
            assertEquals("", item.remark());
            item.blanks().forEach(blank -> assertEquals("", blank.filled()));
            for (Handout.Option option : item.options()) {
                assertFalse(option.ticked());
                assertEquals("", option.remark());
            }
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void key_ofLesson_ticksOneAnswerAndFillsEveryGap(String id) {
        Handout key = make(id, Locale.GERMAN, Kind.KEY);

        for (Handout.Item item : key.items()) {
            if (!item.options().isEmpty()) {
                assertEquals(
                        1,
                        item.options().stream().filter(Handout.Option::ticked).count());
                item.options().forEach(option -> assertFalse(option.remark().isBlank()));
            }
            item.blanks().forEach(blank -> assertFalse(blank.filled().isBlank()));
            assertFalse(item.text().contains("{") || item.text().contains("—"), item.text());
        }
    }

    @ParameterizedTest
    @MethodSource("ids")
    void pdf_ofKey_holdsEveryAnswerAsText(String id) throws IOException {
        Handout key = make(id, Locale.GERMAN, Kind.KEY);

        String text = pdfText(key);

        assertTrue(text.contains(key.title()), text);
        for (Handout.Item item : key.items()) {
            for (Handout.Blank blank : item.blanks()) {
                if (blank.lines() > 0) {
                    String line = (blank.label() + " " + blank.filled()).replace('\u00a0', ' ');
                    assertTrue(text.contains(line), line);
                }
            }
        }
    }

    @Test
    void pdf_ofSheet_saysWhatItIsNot() throws IOException {
        Handout sheet = make("14-wrong-way-round", Locale.ENGLISH, Kind.SHEET);

        assertTrue(pdfText(sheet).contains("Teaching model, no clearance to build"));
    }

    @Test
    void html_ofKey_isMarkupWithPicturesThatParse() {
        Handout key = make("08-the-cell-sags", Locale.ENGLISH, Kind.KEY);

        String html = HandoutHtml.write(List.of(key));

        Matcher svg = Pattern.compile("<svg.*?</svg>", Pattern.DOTALL).matcher(html);
        assertTrue(svg.find());
        String picture = svg.group();
        assertDoesNotThrow(() -> DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(picture))));
        assertTrue(html.contains("<strong>internal resistance</strong>"));
        assertFalse(html.contains("<script"));
    }

    @Test
    void html_ofHostileText_isEscaped() {
        Handout hostile = new Handout(
                Locale.ENGLISH,
                "<script>a</script>",
                "\"x\"",
                List.of(Handout.Item.text("<img src=x> [a](javascript:b)", Handout.Frame.BOX)),
                "n");

        String html = HandoutHtml.write(List.of(hostile));

        assertFalse(html.contains("<script>a") || html.contains("<img"), html);
        assertFalse(html.contains("href"), "an address is text: " + html);
    }

    @Test
    void items_ofLesson_followItsSteps() {
        Lesson lesson = LessonFixture.builtIn("06-same-watts");
        long asked = lesson.steps().stream()
                .filter(step -> step instanceof Step.Choose)
                .count();

        long printed = make("06-same-watts", Locale.ENGLISH, Kind.SHEET).items().stream()
                .filter(item -> !item.options().isEmpty())
                .count();

        assertEquals(asked, printed);
    }
}
