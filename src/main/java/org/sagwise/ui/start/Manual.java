package org.sagwise.ui.start;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.ui.text.Wording;

/** The text of the manual, which people read as a file too, cut where chapters and pictures are. */
final class Manual {

    private static final String FOLDER = "/org/sagwise/manual/";

    /** A picture in the text: what it says, the demo, whether its button is held. */
    private static final Pattern PICTURE =
            Pattern.compile("!\\[(.*)]\\(pictures/([a-z0-9-]+?)(-held)?\\.[a-z]+\\.svg\\)");

    /** A picture of the window itself: what it says, its file. */
    private static final Pattern WINDOW = Pattern.compile("!\\[(.*)]\\(pictures/(window-[a-z]+\\.[a-z]+\\.png)\\)");

    private static final String CHAPTER = "## ";

    private Manual() {}

    /** A stretch of the manual. */
    sealed interface Piece {

        /** It in Markdown. */
        String markdown();

        /** Running text. */
        record Words(String markdown) implements Piece {}

        /** The title of a chapter. */
        record Chapter(String title) implements Piece {
            @Override
            public String markdown() {
                return CHAPTER + title;
            }
        }

        /** The window, as a picture that the build has taken of it. */
        record Window(String says, String file) implements Piece {
            @Override
            public String markdown() {
                return says;
            }

            /** The picture itself; empty where it was not packed. */
            Optional<InputStream> open() {
                return Optional.ofNullable(Manual.class.getResourceAsStream(FOLDER + "pictures/" + file));
            }
        }

        /** A bench, as one of the examples shows it. */
        record Picture(String says, String demo, boolean held) implements Piece {
            @Override
            public String markdown() {
                return says;
            }
        }
    }

    /** The manual in a language; in English where it has none in that. */
    static List<Piece> in(Locale locale) {
        List<Piece> pieces = new ArrayList<>();
        StringBuilder words = new StringBuilder();
        String whole = Wording.forKeysOf(System.getProperty("os.name", ""), text(locale));
        for (String line : whole.lines().toList()) {
            Matcher picture = PICTURE.matcher(line);
            Matcher window = WINDOW.matcher(line);
            if (window.matches()) {
                flush(words, pieces);
                pieces.add(new Piece.Window(window.group(1), window.group(2)));
            } else if (picture.matches()) {
                flush(words, pieces);
                pieces.add(new Piece.Picture(picture.group(1), picture.group(2), picture.group(3) != null));
            } else if (line.startsWith(CHAPTER)) {
                flush(words, pieces);
                pieces.add(new Piece.Chapter(line.substring(CHAPTER.length())));
            } else {
                words.append(line).append('\n');
            }
        }
        flush(words, pieces);
        return pieces;
    }

    private static void flush(StringBuilder words, List<Piece> pieces) {
        if (!words.toString().isBlank()) {
            pieces.add(new Piece.Words(words.toString()));
        }
        words.setLength(0);
    }

    private static String text(Locale locale) {
        try (InputStream own = Manual.class.getResourceAsStream(FOLDER + "manual." + locale.getLanguage() + ".md");
                InputStream english = Manual.class.getResourceAsStream(FOLDER + "manual.en.md")) {
            return new String((own == null ? english : own).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException("the manual was broken when the program was built", broken);
        }
    }
}
