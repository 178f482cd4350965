package org.sagwise.picture.look;

/** Text as it may stand in every kind of picture. */
public final class Plain {

    private Plain() {}

    /**
     * The text with a replacement mark for every character that XML 1.0 does not allow or that has
     * no shape, such as control characters and halves of pairs; line breaks become spaces.
     */
    public static String text(String text) {
        boolean plain = true;
        for (int i = 0; i < text.length() && plain; i++) {
            char letter = text.charAt(i);
            plain = letter >= ' ' && letter < 0x7F || letter >= 0xA0 && letter < 0xD800;
        }
        return plain ? text : cleaned(text);
    }

    private static String cleaned(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().forEach(point -> {
            if (Character.isWhitespace(point)) {
                clean.append(' ');
            } else if (isAllowed(point)) {
                clean.appendCodePoint(point);
            } else {
                clean.append('\uFFFD');
            }
        });
        return clean.toString();
    }

    private static boolean isAllowed(int point) {
        boolean control = Character.isISOControl(point);
        boolean half = point >= 0xD800 && point <= 0xDFFF;
        boolean none = (point & 0xFFFE) == 0xFFFE;
        return !control && !half && !none;
    }
}
