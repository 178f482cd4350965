package org.sagwise.picture.pen;

import org.sagwise.text.Printable;

/** Text as it may stand in every kind of picture. */
public final class Plain {

    private static final int MARK = 0xFFFD;

    private Plain() {}

    /**
     * The text with a replacement mark for every character that XML 1.0 does not allow or that has
     * no shape, such as control characters, halves of pairs and marks that turn the direction of
     * what follows; line breaks and tabs become spaces.
     */
    public static String text(String text) {
        for (int i = 0; i < text.length(); i++) {
            char letter = text.charAt(i);
            if (Character.isSurrogate(letter) || plain(letter) != letter) {
                return cleaned(text);
            }
        }
        return text;
    }

    private static String cleaned(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().forEach(point -> clean.appendCodePoint(plain(point)));
        return clean.toString();
    }

    /** What stands for a character: mostly the character. */
    private static int plain(int point) {
        if (Printable.isOrdinary(point)) {
            return point;
        }
        boolean none = (point & 0xFFFE) == 0xFFFE;
        return switch (Character.getType(point)) {
            case Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR -> ' ';
            case Character.CONTROL -> Character.isWhitespace(point) ? ' ' : MARK;
            case Character.FORMAT, Character.SURROGATE -> MARK;
            default -> none ? MARK : point;
        };
    }
}
