package org.sagwise.report.picture;

import java.util.List;
import java.util.Locale;
import org.sagwise.hazard.Notices;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.look.WordWrap;
import org.sagwise.picture.pen.Align;

/**
 * The foot of a picture, which says that this is a teaching model.
 *
 * @param lines its words, wrapped
 */
record NoticeFoot(List<String> lines) {

    private static final double MARGINS = 16;

    static NoticeFoot of(Locale locale, double width) {
        return new NoticeFoot(WordWrap.lines(Notices.exportLine(locale), TextStyle.SMALL, width));
    }

    /** Height of its words alone. */
    double wordsHigh() {
        return lines.size() * TextStyle.SMALL.lineHeight(1);
    }

    /** Height with room above and below its words. */
    double high() {
        return wordsHigh() + MARGINS;
    }

    /** Paints it under a line. */
    void paint(ThemedPen pen, double left, double right, double top, double gap) {
        pen.line(left, top, right, top, Tone.PAPER_EDGE, 1);
        write(pen, left, top + gap + 0.8 * TextStyle.SMALL.lineHeight(1));
    }

    /**
     * Writes its words.
     *
     * @param base on which the first line of them stands
     */
    void write(ThemedPen pen, double left, double base) {
        double y = base;
        for (String line : lines) {
            pen.text(line, left, y, TextStyle.SMALL, Tone.INK, Align.LEFT);
            y += TextStyle.SMALL.lineHeight(1);
        }
    }
}
