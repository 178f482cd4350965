package org.sagwise.app;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;

class DesktopFilesTest {

    private static final String TYPE = "application/vnd.sagwise.scenario+json";

    @TempDir
    private Path program;

    @BeforeEach
    void write() throws IOException {
        DesktopFiles.main(new String[] {"assets/desktop", program.toString(), "1.2.3"});
    }

    private Path share(String file) {
        return program.resolve("share").resolve(file);
    }

    private Document xml(String file) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(share(file).toFile());
    }

    @Test
    void main_menuEntry_opensTheTypeThatIsDeclared() throws Exception {
        List<String> entry = Files.readAllLines(share("applications/org.sagwise.Sagwise.desktop"));
        assertTrue(entry.contains("MimeType=" + TYPE + ";"), entry.toString());
        assertTrue(entry.contains("Icon=org.sagwise.Sagwise"), entry.toString());
        Document types = xml("mime/packages/org.sagwise.Sagwise.mime.xml");
        var type = types.getElementsByTagName("mime-type").item(0);
        assertEquals(TYPE, type.getAttributes().getNamedItem("type").getNodeValue());
        var glob = types.getElementsByTagName("glob").item(0);
        assertEquals(
                "*.sagwise.json", glob.getAttributes().getNamedItem("pattern").getNodeValue());
        Document about = xml("metainfo/org.sagwise.Sagwise.metainfo.xml");
        assertEquals(TYPE, about.getElementsByTagName("mediatype").item(0).getTextContent());
    }

    @Test
    void main_icons_haveTheSizeOfTheirFolder() throws Exception {
        int found = 0;
        try (Stream<Path> files = Files.walk(share("icons"))) {
            for (Path file :
                    files.filter(each -> each.toString().endsWith(".png")).toList()) {
                var image = ImageIO.read(file.toFile());
                String size = image.getWidth() + "x" + image.getHeight();
                assertEquals(size, file.getParent().getParent().getFileName().toString());
                found++;
            }
        }
        assertEquals(16, found);
        assertEquals(
                "svg",
                xml("icons/hicolor/scalable/apps/org.sagwise.Sagwise.svg")
                        .getDocumentElement()
                        .getTagName());
    }

    @Test
    void main_manual_isThereInBothLanguages() throws IOException {
        assertTrue(Files.readString(share("man/man1/sagwise.1")).contains("Sagwise 1.2.3"));
        assertTrue(Files.readString(share("man/de/man1/sagwise.1")).contains("ÜBERSICHT"));
    }

    @Test
    void main_installer_canBeRun() {
        assertTrue(Files.isExecutable(program.resolve("install-for-me")));
    }
}
