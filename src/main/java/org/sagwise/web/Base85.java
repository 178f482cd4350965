package org.sagwise.web;

/**
 * Bytes as letters that may stand in a block of a page: four bytes in five, where base64 needs more than five and a
 * quarter. None of the letters can end a block or begin a comment. The loader reads it.
 */
final class Base85 {

    /** In the order of their codes; no quote, {@code <}, {@code >}, {@code &}, backslash, hyphen, backtick or brace. */
    static final String LETTERS = letters();

    private static final int BASE = 85;

    private Base85() {}

    private static String letters() {
        StringBuilder letters = new StringBuilder();
        for (char letter = '!'; letter <= '~'; letter++) {
            if ("\"'<>&\\-`{".indexOf(letter) < 0) {
                letters.append(letter);
            }
        }
        return letters.toString();
    }

    static String of(byte[] bytes) {
        StringBuilder out = new StringBuilder(bytes.length / 4 * 5 + 5);
        for (int at = 0; at < bytes.length; at += 4) {
            int there = Math.min(4, bytes.length - at);
            long group = 0;
            for (int i = 0; i < 4; i++) {
                group = group << 8 | (i < there ? bytes[at + i] & 0xFF : 0);
            }
            char[] five = new char[5];
            for (int i = 4; i >= 0; i--) {
                five[i] = LETTERS.charAt((int) (group % BASE));
                group /= BASE;
            }
            out.append(five, 0, there + 1);
        }
        return out.toString();
    }
}
