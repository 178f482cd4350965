package org.sagwise.picture.stairs;

import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.look.WordWrap;
import org.sagwise.picture.pen.Align;
import org.sagwise.reading.Staircase.Kind;

/** How blocks of steps are filled. */
final class StairInk {

    private StairInk() {}

    /** A board takes what cells give, as a load does, though it gives on what it takes. */
    static Tone ink(Kind kind) {
        return kind == Kind.BOARD ? Tone.LOAD : sorted(kind);
    }

    private static Tone sorted(Kind kind) {
        return switch (kind.sort()) {
            case SOURCE -> Tone.CLIMB;
            case SAG -> Tone.SAG;
            case JOINT, IN_LINE -> Tone.DROP;
            case GAP -> Tone.MUTED;
            case LOAD -> Tone.LOAD;
        };
    }

    private static Tone ground(Kind kind) {
        if (kind == Kind.BOARD) {
            return Tone.LOAD_GROUND;
        }
        return switch (kind.sort()) {
            case SOURCE -> Tone.CLIMB_GROUND;
            case SAG -> Tone.SAG_GROUND;
            case JOINT, IN_LINE -> Tone.DROP_GROUND;
            case GAP -> Tone.PAPER;
            case LOAD -> Tone.LOAD_GROUND;
        };
    }

    /** Fills a block: sag hatched, an open gap only outlined, a cell that is gone down barred. */
    static void block(ThemedPen pen, Box block, Kind kind, boolean backward) {
        block(pen, block, kind, backward, false);
    }

    /**
     * Fills a block.
     *
     * @param stopped whether nothing flows through what lets current pass when it works
     */
    static void block(ThemedPen pen, Box block, Kind kind, boolean backward, boolean stopped) {
        if (block.height() < 0.4) {
            return;
        }
        if (kind == Kind.GAP || stopped) {
            pen.drawDashed(block, Tone.MUTED, 1.4, 5, 4);
            return;
        }
        pen.fill(block, ground(kind));
        if (kind == Kind.SAG) {
            pen.hatch(block, Tone.SAG, 7, 1.5);
        } else if (backward) {
            pen.hatch(block, Tone.CLIMB, 14, 1.2);
        }
        pen.draw(block, ink(kind), 0.9);
    }

    /** Says something in the middle of a place where nothing is drawn, on as many lines as it takes, none above a top. */
    static void sentence(ThemedPen pen, String words, double middleX, double middleY, double room, double top) {
        double scale = pen.textScale();
        List<String> lines = WordWrap.lines(words, line -> TextStyle.PLAIN.width(line, scale) <= room);
        double high = TextStyle.PLAIN.lineHeight(scale);
        double y = Math.max(middleY - (lines.size() - 1) * high / 2, top + high);
        for (String line : lines) {
            pen.textWithin(line, middleX, y, room, TextStyle.PLAIN, Tone.MUTED, Align.MIDDLE);
            y += high;
        }
    }
}
