package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.w3c.dom.Document;

/** Pictures on the command line: readable by others, in the size asked for, refused in words. */
class PictureTest {

    private static final String DEMO = Cli.demo("side-by-side-one-reversed");

    @TempDir
    private Path folder;

    private Path out(String name) {
        return folder.resolve(name);
    }

    private Path picture(String name, String... more) {
        Path out = out(name);
        String[] call = {"picture", DEMO, "-o", out.toString()};
        String[] all = Arrays.copyOf(call, call.length + more.length);
        System.arraycopy(more, 0, all, call.length, more.length);
        Cli.Outcome outcome = Cli.call(all);
        assertEquals(0, outcome.status(), outcome.err());
        return out;
    }

    @Test
    void picture_asPng_hasTheSizeOfAForumPost() throws IOException {
        Path out = picture("bench.png");
        var image = ImageIO.read(out.toFile());
        assertEquals(1200, image.getWidth());
        assertEquals(900, image.getHeight());
        assertTrue(Files.size(out) < 250_000, "small enough for a forum");
    }

    @Test
    void picture_inASizeAskedFor_hasIt() throws IOException {
        assertEquals(
                640, ImageIO.read(picture("b.PNG", "--size=640x480").toFile()).getWidth());
    }

    @Test
    void picture_asSvg_isXmlWithItsTextAsText() throws Exception {
        Path out = picture("bench.svg");
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
        Document document = factory.newDocumentBuilder().parse(out.toFile());
        assertEquals("svg", document.getDocumentElement().getTagName());
        assertTrue(document.getDocumentElement().getTextContent().contains("DANGER"));
        assertEquals(0, document.getElementsByTagName("script").getLength());
    }

    @Test
    void picture_asPdf_beginsAsOneDoes() throws IOException {
        byte[] begin = Arrays.copyOf(Files.readAllBytes(picture("bench.pdf")), 5);
        assertArrayEquals("%PDF-".getBytes(StandardCharsets.US_ASCII), begin);
    }

    @Test
    void picture_ofBothPositions_differs() throws IOException {
        byte[] held = Files.readAllBytes(picture("held.svg", "--fired"));
        byte[] letGo = Files.readAllBytes(picture("rest.svg", "--rest"));
        assertFalse(Arrays.equals(held, letGo));
        assertArrayEquals(held, Files.readAllBytes(picture("usual.svg")));
    }

    @Test
    void picture_asSchematic_saysTheSameNumbersInAnotherDrawing() throws IOException {
        String bench = Files.readString(picture("bench.svg"));
        String schematic = Files.readString(picture("schematic.svg", "--schematic"));
        assertFalse(bench.equals(schematic));
        assertTrue(schematic.contains("175 A"), "the cell's current");
        assertTrue(bench.contains("175 A"), "the cell's current");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "-o bench.gif | bench.gif has no ending",
                "-o a.png --size=big | big is no size of a picture",
                "-o a.png --size=99999x10 | each from 320 to 8000 pixels",
                "-o a.png --theme=pink | it can be: light, dark, contrast",
                "--rest | Something is missing: -o",
            })
    void picture_thatCannotBe_isToldInWords(String more, String words) {
        Cli.Outcome outcome = Cli.call(("picture " + DEMO + " " + more).split(" "));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains(words), outcome.err());
    }

    @Test
    void picture_intoNoFolder_isToldInWords() {
        Cli.Outcome outcome =
                Cli.call("picture", DEMO, "-o", out("no").resolve("a.png").toString());
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("There is no folder"), outcome.err());
    }
}
