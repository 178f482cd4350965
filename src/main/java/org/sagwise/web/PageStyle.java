package org.sagwise.web;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Typeface;

/** The style of a live page: its sheet, the colours of the themes, and the letters of the typeface that it needs. */
final class PageStyle {

    /** Signs that the program prints, besides letters. */
    private static final String SIGNS = "−–—…‘’‚“”„›‹«»·×÷±≈≤≥∞→←↑↓↶↷▸▾°²³µμΩ€%‰√";

    /** Those that a browser needs to show letters one by one. */
    private static final List<String> TABLES = List.of(
            "head", "hhea", "hmtx", "maxp", "cmap", "loca", "glyf", "cvt ", "fpgm", "prep", "OS/2", "name", "post");

    private static final Map<String, Tone> COLOURS = new LinkedHashMap<>();

    static {
        COLOURS.put("paper", Tone.PAPER);
        COLOURS.put("ink", Tone.INK);
        COLOURS.put("muted", Tone.MUTED);
        COLOURS.put("edge", Tone.PAPER_EDGE);
        COLOURS.put("felt", Tone.FELT);
        COLOURS.put("level", Tone.LEVEL);
        COLOURS.put("level-ink", Tone.PAPER);
        COLOURS.put("button", Tone.BUTTON);
        COLOURS.put("button-ink", Tone.PAPER);
        COLOURS.put("flag", Tone.FLAG);
        COLOURS.put("sag", Tone.SAG);
        COLOURS.put("chosen", Tone.CHOSEN);
    }

    private PageStyle() {}

    /**
     * @param text what the page shows, to have its letters
     */
    static String of(String text) {
        TreeSet<Integer> letters = letters(text);
        return font(Typeface.Weight.REGULAR, "normal", letters)
                + font(Typeface.Weight.BOLD, "bold", letters)
                + colours(":root", Theme.LIGHT)
                + "@media (prefers-color-scheme: dark) { " + colours(":root", Theme.DARK) + "}\n"
                + "@media (prefers-contrast: more) { " + colours(":root", Theme.HIGH_CONTRAST) + "}\n"
                + "@media print { " + colours(":root", Theme.LIGHT) + "}\n"
                + PageWriter.resource("page.css");
    }

    private static String colours(String selector, Theme theme) {
        return COLOURS.entrySet().stream()
                .map(colour -> "--" + colour.getKey() + ": "
                        + theme.colour(colour.getValue()).hex() + ";")
                .collect(Collectors.joining(" ", selector + " { ", " }\n"));
    }

    /** Western letters, since a reader may type them, the signs that we print, and whatever the page says itself. */
    private static TreeSet<Integer> letters(String text) {
        TreeSet<Integer> letters = new TreeSet<>();
        for (int letter = ' '; letter < 0x180; letter++) {
            letters.add(letter);
        }
        SIGNS.codePoints().forEach(letters::add);
        text.codePoints().filter(letter -> letter >= ' ').limit(200_000).forEach(letters::add);
        return letters;
    }

    private static String font(Typeface.Weight weight, String name, TreeSet<Integer> letters) {
        try (InputStream file = Typeface.file(weight);
                TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(file))) {
            TTFSubsetter subset = new TTFSubsetter(font, TABLES);
            letters.forEach(subset::add);
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            subset.writeToStream(out);
            return "@font-face { font-family: '" + Typeface.FAMILY + "'; font-weight: " + name
                    + "; src: url(data:font/woff;base64,"
                    + Base64.getEncoder().encodeToString(Woff.of(out.toByteArray())) + "); }\n";
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
