package org.sagwise.picture.look;

import java.util.List;
import java.util.function.Predicate;
import org.sagwise.text.Wrap;

/** Breaks text into lines that fit a width. */
public final class WordWrap {

    private WordWrap() {}

    /** Lines of a style at the usual size of text. */
    public static List<String> lines(String text, TextStyle style, double width) {
        return lines(text, line -> style.width(line, 1) <= width);
    }

    /** Lines that fit, measured by whoever draws them. */
    public static List<String> lines(String text, Predicate<String> fits) {
        return Wrap.lines(text, fits);
    }
}
