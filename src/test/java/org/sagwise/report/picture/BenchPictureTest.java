package org.sagwise.report.picture;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.fixture.Circuits;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.RunCsv;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Scenario;
import org.w3c.dom.Document;

class BenchPictureTest {

    static Stream<Scenario> scenarios() {
        return Scenes.scenarios().values().stream();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void write_anyBenchAsSvg_isParsedWithoutADocumentType(Scenario scenario) throws Exception {
        Document svg = svg(scenario.pressed(), Locale.GERMAN);
        assertEquals("svg", svg.getDocumentElement().getLocalName());
        assertEquals("0 0 1200 900", svg.getDocumentElement().getAttribute("viewBox"));
        assertEquals(0, svg.getElementsByTagNameNS("*", "image").getLength());
        assertTrue(svg.getDocumentElement().getTextContent().contains("Lehrmodell"));
    }

    @Test
    void write_svg_keepsFiguresAsTextWithTheirWidth() throws Exception {
        Document svg = svg(Scenes.demo("bench-check").pressed(), Locale.ENGLISH);
        String text = svg.getDocumentElement().getTextContent();
        assertTrue(text.contains("3.80 V"));
        assertTrue(text.contains("sag 0.34 V"));
        var texts = svg.getElementsByTagNameNS("*", "text");
        for (int i = 0; i < texts.getLength(); i++) {
            var length = texts.item(i).getAttributes().getNamedItem("textLength");
            assertTrue(Double.parseDouble(length.getNodeValue()) > 0);
        }
    }

    @Test
    void write_hostileTitle_staysTextInEveryFormat() throws Exception {
        String hostile = "</text><script>alert(1)</script>\u0007\uD800 & \uFFFF \u202E";
        Scenario scenario = Scenes.demo("bench-check").withTitle(hostile);
        Document svg = svg(scenario, Locale.ENGLISH);
        assertEquals(0, svg.getElementsByTagNameNS("*", "script").getLength());
        String text = svg.getDocumentElement().getTextContent();
        assertTrue(text.contains("<script>"));
        assertFalse(text.contains("\u202E"), "what turns the direction of text");
        assertTrue(bytes(scenario, PictureFormat.PDF, Locale.ENGLISH).length > 1000);
        assertTrue(bytes(scenario, PictureFormat.PNG, Locale.ENGLISH).length > 1000);
    }

    /** Amps of a shorted cell without resistance are no number; a place of a picture must be one. */
    @Test
    void write_shortedIdealCell_hasNoPlaceThatIsNoNumber() throws Exception {
        Scenario shorted = Scenario.of(
                "",
                List.of(Circuits.cell("A", 4.2, 0), Circuits.cell("B", 4, 0)),
                List.of(Circuits.ideal("A.+", "A.-"), Circuits.ideal("A.+", "B.+")));
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            String svg = new String(bytes(shorted, PictureFormat.SVG, locale), StandardCharsets.UTF_8);
            assertFalse(svg.contains("NaN"), svg);
            assertFalse(svg.contains("Infinity"), svg);
        }
        String words = svg(shorted, Locale.ENGLISH).getDocumentElement().getTextContent();
        assertTrue(words.contains("amps not known"), words);
    }

    /** Cells lie crosswise here: their lowest place is 4 V below the minus of the first. */
    @Test
    void write_stairsAndColours_countFromOneZero() throws Exception {
        Document svg = svg(Scenes.demo("two-by-two").pressed(), Locale.ENGLISH);
        List<String> volts = new ArrayList<>();
        var texts = svg.getElementsByTagNameNS("*", "text");
        for (int i = 0; i < texts.getLength(); i++) {
            if (texts.item(i).getTextContent().matches("[-−]?[0-9.]+ V")) {
                volts.add(texts.item(i).getTextContent());
            }
        }
        assertTrue(volts.containsAll(List.of("0 V", "2 V", "4 V", "6 V", "8 V")), "the stairs: " + volts);
        assertTrue(volts.containsAll(List.of("0.0 V", "8.0 V")), "the colours: " + volts);
        assertTrue(volts.stream().noneMatch(it -> it.matches("[-−].*")), "none below zero: " + volts);
    }

    /** What it weighs and how it cools is not known. */
    @Test
    void write_coilKnownByItsOhms_showsNoTemperature() throws Exception {
        Scenario scenario = Scenes.demo("one-cell-on-half-an-ohm").pressed();
        String text = svg(scenario, Locale.ENGLISH).getDocumentElement().getTextContent();
        assertTrue(text.contains("0.50 Ω"), text);
        assertFalse(text.contains("°C"), text);
        RunResult run =
                Runner.run(Scenes.assess(scenario).bench(), RunPlan.held().until(10));
        assertTrue(Double.isNaN(run.last().coils().get(0).temperatureC()));
        assertTrue(RunCsv.of(run.trace()).strip().endsWith(","), "its column stays empty");
    }

    @Test
    void write_pdf_canBeSearchedAndSaysWhatItIs() throws Exception {
        byte[] pdf = bytes(Scenes.demo("bench-check").pressed(), PictureFormat.PDF, Locale.ENGLISH);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            String text = new PDFTextStripper().getText(document);
            assertTrue(text.contains("from left to right"), text);
            assertTrue(text.contains("0.30 Ω"), text);
            assertTrue(text.contains("Teaching model"), text);
            assertEquals(1, document.getNumberOfPages());
            assertEquals(900, document.getPage(0).getMediaBox().getWidth(), 0.01);
            assertTrue(document.getDocumentInformation().getTitle().startsWith("The bench check"));
        }
    }

    @Test
    void write_png_hasTheSizeAskedFor() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BenchPicture.write(
                Scenes.assess(Scenes.demo("torn-wrap")),
                PictureFormat.PNG,
                Locale.ENGLISH,
                Theme.DARK,
                PictureSize.PROJECTOR,
                out);
        BufferedImage image = ImageIO.read(new ByteArrayInputStream(out.toByteArray()));
        assertEquals(1920, image.getWidth());
        assertEquals(1080, image.getHeight());
    }

    @ParameterizedTest
    @EnumSource(
            value = PictureFormat.class,
            names = {"PNG", "SVG"})
    void write_sameBenchTwice_givesTheSameBytes(PictureFormat format) throws IOException {
        Scenario scenario = Scenes.demo("two-by-two").pressed();
        assertArrayEquals(bytes(scenario, format, Locale.ENGLISH), bytes(scenario, format, Locale.ENGLISH));
    }

    @Test
    void ofFileName_endings_areKnownInAnyCase() {
        assertEquals(Optional.of(PictureFormat.SVG), PictureFormat.ofFileName("a.b.SVG"));
        assertEquals(Optional.of(PictureFormat.PDF), PictureFormat.ofFileName("x/y.pdf"));
        assertTrue(PictureFormat.ofFileName("png").isEmpty());
    }

    @Test
    void pictureSize_outOfRange_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PictureSize(10, 900));
        assertThrows(IllegalArgumentException.class, () -> new PictureSize(900, 9000));
    }

    private static Document svg(Scenario scenario, Locale locale) throws Exception {
        byte[] bytes = bytes(scenario, PictureFormat.SVG, locale);
        assertFalse(new String(bytes, StandardCharsets.UTF_8).contains("<!DOCTYPE"));
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        return factory.newDocumentBuilder().parse(new ByteArrayInputStream(bytes));
    }

    private static byte[] bytes(Scenario scenario, PictureFormat format, Locale locale) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BenchPicture.write(Scenes.assess(scenario), format, locale, Theme.LIGHT, PictureSize.FORUM, out);
        return out.toByteArray();
    }

    /** A reader without our typeface, which knows no width of a text either, sees the same letters. */
    @Test
    void svg_ofAFile_showsLettersAsOutlinesAndHoldsTheTextUnseen() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        BenchPicture.write(
                Scenes.assess(Scenes.demo("thin-wire")),
                PictureFormat.SVG,
                Locale.ENGLISH,
                Theme.LIGHT,
                PictureSize.FORUM,
                out);
        String svg = out.toString(StandardCharsets.UTF_8);
        long texts = svg.lines().filter(line -> line.startsWith("<text")).count();
        long unseen = svg.lines()
                .filter(line -> line.startsWith("<text") && line.contains("fill-opacity=\"0\""))
                .count();
        assertTrue(texts > 20);
        assertEquals(texts, unseen);
        assertTrue(svg.contains(">4.20 V</text>"));
    }
}
