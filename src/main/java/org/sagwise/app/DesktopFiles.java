package org.sagwise.app;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.sagwise.cli.ManPage;
import org.sagwise.report.picture.Icon;

/**
 * Writes what a desktop wants to know, in the folders where it looks: menu entry, file type,
 * description, icons (freedesktop.org Icon Theme Specification) and manual pages. What can be made
 * from the program itself is made from it. Called by the build.
 */
public final class DesktopFiles {

    private static final String PROGRAM = "org.sagwise.Sagwise";
    private static final String SCENARIO = "application-vnd.sagwise.scenario+json";
    private static final List<Integer> SIDES = List.of(16, 24, 32, 48, 64, 128, 256, 512);

    /** Written files, and the folder under {@code share} where each belongs. */
    private static final Map<String, String> WRITTEN = Map.of(
            PROGRAM + ".desktop", "applications",
            PROGRAM + ".metainfo.xml", "metainfo",
            PROGRAM + ".mime.xml", "mime/packages");

    private static final String INSTALLER = "install-for-me";

    private final Path share;

    private DesktopFiles(Path share) {
        this.share = share;
    }

    /**
     * Writes all of them.
     *
     * @param args the folder of the written files, the folder of the packaged program, and its
     *     version
     */
    public static void main(String[] args) throws IOException {
        System.setProperty("java.awt.headless", "true");
        Path written = Path.of(args[0]);
        Path program = Path.of(args[1]);
        String version = args[2];
        DesktopFiles files = new DesktopFiles(program.resolve("share"));
        files.icons(Icon.PROGRAM, "apps", PROGRAM);
        files.icons(Icon.SCENARIO, "mimetypes", SCENARIO);
        files.manual("man/man1", Locale.ENGLISH, version);
        files.manual("man/de/man1", Locale.GERMAN, version);
        for (Map.Entry<String, String> each : WRITTEN.entrySet()) {
            files.copy(written.resolve(each.getKey()), each.getValue());
        }
        Path installer = program.resolve(INSTALLER);
        Files.copy(written.resolve(INSTALLER), installer, StandardCopyOption.REPLACE_EXISTING);
        if (!installer.toFile().setExecutable(true, false)) {
            throw new IOException(installer + " could not be made executable");
        }
    }

    private void copy(Path written, String folder) throws IOException {
        try (OutputStream out = file(folder, written.getFileName().toString())) {
            Files.copy(written, out);
        }
    }

    private void icons(Icon icon, String context, String name) throws IOException {
        for (int side : SIDES) {
            String folder = "icons/hicolor/" + side + "x" + side + "/" + context;
            try (OutputStream out = file(folder, name + ".png")) {
                icon.writePng(side, out);
            }
        }
        try (OutputStream out = file("icons/hicolor/scalable/" + context, name + ".svg")) {
            icon.writeSvg(out);
        }
    }

    private void manual(String folder, Locale locale, String version) throws IOException {
        Files.createDirectories(share.resolve(folder));
        Files.writeString(share.resolve(folder).resolve("sagwise.1"), ManPage.of(locale, version));
    }

    private OutputStream file(String folder, String name) throws IOException {
        Files.createDirectories(share.resolve(folder));
        return Files.newOutputStream(share.resolve(folder).resolve(name));
    }
}
