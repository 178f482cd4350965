package org.sagwise.report.post;

import java.util.regex.Pattern;

/** Takes away what a forum would turn into a link by itself, or into a call to somebody. */
final class Inert {

    private static final Pattern SCHEME = Pattern.compile("(?i)\\b([a-z][a-z0-9+.-]{1,20}):(?=\\S)");

    private static final Pattern WWW = Pattern.compile("(?i)\\bwww\\.");

    /** A name that is called, or an address of mail; no way to escape it works everywhere. */
    private static final Pattern MENTION = Pattern.compile("@(?=[\\p{L}\\p{N}_])");

    private Inert() {}

    /** The text with addresses and names that can be read and no longer clicked or called. */
    static String links(String text) {
        String split = SCHEME.matcher(text).replaceAll("$1: ");
        return MENTION.matcher(WWW.matcher(split).replaceAll("www .")).replaceAll("@ ");
    }
}
