package org.sagwise.report.post;

import java.util.regex.Pattern;

/** Takes away what a forum would turn into a link by itself. */
final class Inert {

    private static final Pattern SCHEME = Pattern.compile("(?i)\\b([a-z][a-z0-9+.-]{1,20}):(?=\\S)");

    private static final Pattern WWW = Pattern.compile("(?i)\\bwww\\.");

    private Inert() {}

    /** The text with addresses that can be read and no longer clicked. */
    static String links(String text) {
        String split = SCHEME.matcher(text).replaceAll("$1: ");
        return WWW.matcher(split).replaceAll("www .");
    }
}
