package org.sagwise.file;

import java.util.Locale;

/**
 * What stands behind the beginning of a share text.
 *
 * @param packed characters of base64url up to the point
 * @param check the digits behind the point; fewer than eight if the end is missing
 */
record SharedBody(String packed, String check) {

    /** How many digits stand behind the point. */
    static final int CHECK_DIGITS = 8;

    /** What stands before them: no character of base64url. */
    static final char END = '.';

    static SharedBody of(String post, int from) {
        StringBuilder packed = new StringBuilder();
        int at = take(post, from, packed, ShareText.MOST_CHARACTERS + 1, SharedBody::isBase64);
        StringBuilder check = new StringBuilder();
        if (at < post.length() && post.charAt(at) == END) {
            take(post, at + 1, check, CHECK_DIGITS, SharedBody::isHexadecimal);
        }
        return new SharedBody(packed.toString(), check.toString().toLowerCase(Locale.ROOT));
    }

    /** Takes at most so many characters of a kind, skips spaces, and says where it ended. */
    private static int take(String post, int from, StringBuilder taken, int most, Characters kind) {
        int at = from;
        while (at < post.length() && taken.length() < most) {
            char sign = post.charAt(at);
            if (kind.has(sign)) {
                taken.append(sign);
            } else if (!isSpace(sign)) {
                break;
            }
            at++;
        }
        return at;
    }

    int length() {
        return packed.length() + (check.isEmpty() ? 0 : 1 + check.length());
    }

    boolean isCutOff() {
        return check.length() < CHECK_DIGITS;
    }

    private static boolean isBase64(char sign) {
        return (sign >= 'a' && sign <= 'z')
                || (sign >= 'A' && sign <= 'Z')
                || (sign >= '0' && sign <= '9')
                || sign == '-'
                || sign == '_';
    }

    private static boolean isHexadecimal(char sign) {
        return Character.digit(sign, 16) >= 0 && sign < 0x80;
    }

    /** Also what forums put in unseen, to let long lines break or to keep them from it, and marks of a byte order. */
    private static boolean isSpace(char sign) {
        return Character.isWhitespace(sign)
                || Character.isSpaceChar(sign)
                || Character.getType(sign) == Character.FORMAT;
    }

    /** A kind of characters. */
    private interface Characters {
        boolean has(char sign);
    }
}
