package org.sagwise.text;

import java.text.Normalizer;
import java.util.Map;
import java.util.function.IntFunction;

/**
 * Makes a text fit for a terminal: control characters that a file may have smuggled in do nothing,
 * and where the terminal knows ASCII alone, signs beyond it are written in letters.
 */
public final class Printable {

    private static final Map<Integer, String> IN_LETTERS = Map.ofEntries(
            Map.entry((int) 'Ω', "ohm"),
            Map.entry((int) '\u2126', "ohm"),
            Map.entry((int) 'µ', "u"),
            Map.entry((int) 'μ', "u"),
            Map.entry((int) '°', ""),
            Map.entry((int) '−', "-"),
            Map.entry((int) '–', "-"),
            Map.entry((int) '—', "-"),
            Map.entry((int) '·', "*"),
            Map.entry((int) '×', "x"),
            Map.entry((int) '±', "+/-"),
            Map.entry((int) '≈', "~"),
            Map.entry((int) '≤', "<="),
            Map.entry((int) '≥', ">="),
            Map.entry((int) '→', "->"),
            Map.entry((int) '›', ">"),
            Map.entry((int) '‹', "<"),
            Map.entry((int) '…', "..."),
            Map.entry((int) '²', "2"),
            Map.entry((int) '³', "3"),
            Map.entry((int) '½', "1/2"),
            Map.entry((int) '∞', "inf"),
            Map.entry((int) '„', "\""),
            Map.entry((int) '“', "\""),
            Map.entry((int) '”', "\""),
            Map.entry((int) '‘', "'"),
            Map.entry((int) '’', "'"),
            Map.entry((int) 'ä', "ae"),
            Map.entry((int) 'ö', "oe"),
            Map.entry((int) 'ü', "ue"),
            Map.entry((int) 'Ä', "Ae"),
            Map.entry((int) 'Ö', "Oe"),
            Map.entry((int) 'Ü', "Ue"),
            Map.entry((int) 'ß', "ss"));

    private static final int LAST_ASCII = 0x7e;

    private static final int SOFT_HYPHEN = 0xad;

    private Printable() {}

    /** One line of text as these signs can show it; tabs and line breaks stay. */
    public static String line(String text, Signs signs) {
        return signs == Signs.PRINT ? print(text) : shown(text, Printable::inAscii);
    }

    /** One line of text as print can show it; apart from ASCII, whose letters without marks a browser cannot make. */
    public static String print(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isOrdinary(text.charAt(i))) {
                return shown(text, Printable::letter);
            }
        }
        return text;
    }

    /**
     * Whether a sign is among those of which nearly all texts are made: it has a shape and steers nothing. Others are
     * looked up in Unicode's table of all signs, which a browser takes a tenth of a second to unpack.
     */
    public static boolean isOrdinary(int sign) {
        return sign >= ' ' && sign <= LAST_ASCII
                || sign >= 0xa0 && sign < 0x600 && sign != SOFT_HYPHEN
                || sign >= 0x2010 && sign < 0x2028
                || sign >= 0x2030 && sign < 0x2060
                || sign >= 0x2070 && sign < 0x2300;
    }

    private static String shown(String text, IntFunction<String> letters) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(sign -> shown.append(sign(sign, letters)));
        return shown.toString();
    }

    private static String sign(int sign, IntFunction<String> letters) {
        if (sign == '\t' || sign == '\n') {
            return letter(sign);
        }
        return steers(sign) || isNoCharacter(sign) ? "?" : letters.apply(sign);
    }

    private static String letter(int sign) {
        return new String(Character.toChars(sign));
    }

    private static String inAscii(int sign) {
        return sign <= LAST_ASCII ? letter(sign) : IN_LETTERS.getOrDefault(sign, withoutMarks(sign));
    }

    /** Whether a sign is (part of) an escape sequence, or one of the marks that make text run the other way or overlap. */
    public static boolean steers(int sign) {
        if (isOrdinary(sign)) {
            return false;
        }
        return switch (Character.getType(sign)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR,
                    Character.SURROGATE -> true;
            default -> false;
        };
    }

    /** Numbers that Unicode keeps free for ever; neither HTML nor XML may hold all of them. */
    private static boolean isNoCharacter(int sign) {
        return (sign & 0xfffe) == 0xfffe || sign >= 0xfdd0 && sign <= 0xfdef;
    }

    private static String withoutMarks(int sign) {
        String letters =
                Normalizer.normalize(letter(sign), Normalizer.Form.NFKD).replaceAll("[^\\x20-\\x7e]", "");
        return letters.isEmpty() ? "?" : letters;
    }
}
