package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;

/** To and from share text on the command line. */
class ShareTest {

    private static final String DEMO = Cli.demo("side-by-side-one-reversed");

    @TempDir
    private Path folder;

    private static String shared() {
        return Cli.call("share", DEMO).out().strip();
    }

    @Test
    void unshare_whatShareGave_isTheSameScenario() throws IOException {
        ScenarioReader reader = new ScenarioReader(CatalogueLoader.builtIn());
        Path out = folder.resolve("back.sagwise.json");
        Cli.Outcome outcome = Cli.call("unshare", shared(), "-o", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        assertEquals(reader.read(Path.of(DEMO)), reader.read(out));
        assertEquals(
                Files.readString(out),
                Cli.callWithInput(shared(), "unshare", "-").out());
    }

    /** Read back by ZXing's own reader. */
    @Test
    void share_asQrCode_canBeScanned() throws Exception {
        Path out = folder.resolve("code.png");
        Cli.Outcome outcome = Cli.call("share", DEMO, "--qr", out.toString());
        assertEquals(0, outcome.status(), outcome.err());
        BufferedImage image = ImageIO.read(out.toFile());
        int width = image.getWidth();
        int height = image.getHeight();
        int[] pixels = image.getRGB(0, 0, width, height, null, 0, width);
        var seen = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(width, height, pixels)));
        assertEquals(shared(), new QRCodeReader().decode(seen).getText());
        assertEquals(shared(), outcome.out().strip());
    }

    @Test
    void share_tooLongForAQrCode_isToldInWordsAndDrawsNothing() throws IOException {
        StringBuilder about = new StringBuilder();
        Random random = new Random(1);
        for (int i = 0; i < 6000; i++) {
            about.append((char) ('a' + random.nextInt(26)));
        }
        Path out = folder.resolve("code.svg");
        Cli.Outcome outcome = Cli.callWithInput(
                "{\"sagwise\": 1, \"parts\": [], \"links\": [], \"about\": \"" + about + "\"}",
                "share",
                "-",
                "--qr",
                out.toString());
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().contains("2,953"), outcome.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void unshare_wordsThatAShellSplit_areJoined() {
        String text = shared();
        Cli.Outcome outcome = Cli.call("unshare", text.substring(0, 50), text.substring(50));
        assertEquals(0, outcome.status(), outcome.err());
    }

    @Test
    void unshare_clipped_isToldInWords() {
        Cli.Outcome outcome = Cli.call("unshare", shared().substring(0, 200));
        assertEquals(2, outcome.status());
        assertTrue(outcome.err().startsWith("share text: The end"), outcome.err());
    }

    @Test
    void unshare_intoAFolderOrNowhere_isToldInWords() {
        assertEquals(2, Cli.call("unshare", shared(), "-o", folder.toString()).status());
        Cli.Outcome nowhere =
                Cli.call("unshare", shared(), "-o", folder.resolve("no/a.json").toString());
        assertEquals(2, nowhere.status());
        assertTrue(nowhere.err().contains("There is no folder"), nowhere.err());
    }

    @Test
    void anyVerb_takesShareTextForAFile() throws IOException {
        assertEquals(
                Cli.call("readings", DEMO).out(), Cli.call("readings", shared()).out());
        Path post = folder.resolve("post.txt");
        Files.writeString(post, "Somebody wrote:\n" + shared() + "\nAny ideas?\n");
        assertEquals(1, Cli.call("check", post.toString()).status());
    }
}
