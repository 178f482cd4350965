package org.sagwise.picture.section;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.text.Texts;

/**
 * A round cell of our own, cut lengthwise and drawn out of scale, so that thin things can be seen. Widths and heights are
 * in drawing units from the upper left corner; the whole is {@link #WIDTH} by {@link #HEIGHT}.
 */
public final class CellSection {

    public static final double WIDTH = 260;
    public static final double HEIGHT = 500;

    private static final double LEFT = 50;
    private static final double RIGHT = 210;
    private static final double RIM = 66;
    private static final double FLOOR = 440;
    private static final double WALL = 8;
    private static final double SLEEVE = 5;
    private static final int TURNS = 5;

    private static final Map<Piece, List<Box>> BOXES = boxes();

    /** What a cell is made of. Each has a name, a purpose and a source in the bundle {@code cell-section}. */
    public enum Piece {
        WRAP(Tone.WRAP),
        CAN(Tone.METAL),
        TOP_CAP(Tone.METAL_LIGHT),
        GASKET(Tone.EDGE),
        PTC(Tone.FLAG),
        VENT(Tone.METAL_DARK),
        CID(Tone.NOTE_EDGE),
        PLUS_FOIL(Tone.LOAD_GROUND),
        SEPARATOR(Tone.DROP_GROUND),
        MINUS_FOIL(Tone.BUTTON),
        TABS(Tone.METAL_DARK),
        GUARD_BOARD(Tone.LEVEL);

        private final Tone tone;

        Piece(Tone tone) {
            this.tone = tone;
        }

        private String key() {
            return name().toLowerCase(Locale.ROOT).replace('_', '-');
        }

        /** What it is called. */
        public String title(Locale locale) {
            return Texts.in("cell-section", locale).say(key() + ".title");
        }

        /** What it is there for. */
        public String purpose(Locale locale) {
            return Texts.in("cell-section", locale).say(key() + ".text");
        }

        /** Where that is from. */
        public String source(Locale locale) {
            return Texts.in("cell-section", locale).say(key() + ".source");
        }
    }

    private CellSection() {}

    private static Map<Piece, List<Box>> boxes() {
        Map<Piece, List<Box>> boxes = new EnumMap<>(Piece.class);
        boxes.put(
                Piece.WRAP,
                List.of(
                        Box.between(LEFT - SLEEVE, RIM - 4, LEFT, FLOOR + 26),
                        Box.between(RIGHT, RIM - 4, RIGHT + SLEEVE, FLOOR + 26),
                        Box.between(LEFT - SLEEVE, RIM - 9, LEFT + 22, RIM - 4),
                        Box.between(RIGHT - 22, RIM - 9, RIGHT + SLEEVE, RIM - 4)));
        boxes.put(
                Piece.CAN,
                List.of(
                        Box.between(LEFT, RIM, LEFT + WALL, FLOOR),
                        Box.between(RIGHT - WALL, RIM, RIGHT, FLOOR),
                        Box.between(LEFT, FLOOR - WALL, RIGHT, FLOOR),
                        Box.between(LEFT, RIM - 4, LEFT + 22, RIM + 4),
                        Box.between(RIGHT - 22, RIM - 4, RIGHT, RIM + 4)));
        boxes.put(
                Piece.TOP_CAP,
                List.of(Box.between(100, 36, 160, 46), Box.between(94, 46, 166, 58), Box.between(80, 58, 180, 66)));
        boxes.put(
                Piece.GASKET,
                List.of(
                        Box.between(LEFT + WALL, RIM + 4, 80, 116),
                        Box.between(180, RIM + 4, RIGHT - WALL, 116),
                        Box.between(72, 54, 80, RIM + 4),
                        Box.between(180, 54, 188, RIM + 4)));
        boxes.put(Piece.PTC, List.of(Box.between(80, 68, 112, 78), Box.between(148, 68, 180, 78)));
        boxes.put(
                Piece.VENT,
                List.of(Box.between(80, 82, 118, 89), Box.between(118, 86, 142, 90), Box.between(142, 82, 180, 89)));
        boxes.put(Piece.CID, List.of(Box.between(84, 96, 176, 103), Box.between(124, 90, 136, 96)));
        List<Box> plus = new ArrayList<>();
        List<Box> apart = new ArrayList<>();
        List<Box> minus = new ArrayList<>();
        double turn = (RIGHT - LEFT - 2 * WALL - 20) / 2.0 / TURNS;
        for (int side = 0; side < 2; side++) {
            for (int i = 0; i < TURNS; i++) {
                double x = side == 0 ? LEFT + WALL + 2 + i * turn : 130 + 8 + i * turn;
                minus.add(new Box(x, 136, turn * 0.28, 280));
                apart.add(new Box(x + turn * 0.28, 130, turn * 0.2, 292));
                plus.add(new Box(x + turn * 0.48, 136, turn * 0.3, 280));
                apart.add(new Box(x + turn * 0.78, 130, turn * 0.18, 292));
            }
        }
        boxes.put(Piece.PLUS_FOIL, plus);
        boxes.put(Piece.SEPARATOR, apart);
        boxes.put(Piece.MINUS_FOIL, minus);
        boxes.put(
                Piece.TABS,
                List.of(
                        Box.between(104, 103, 109, 136),
                        Box.between(LEFT + WALL + 2, 416, LEFT + WALL + 6, FLOOR - WALL)));
        boxes.put(
                Piece.GUARD_BOARD,
                List.of(
                        Box.between(LEFT + 4, FLOOR + 6, RIGHT - 4, FLOOR + 18),
                        Box.between(LEFT + 4, FLOOR + 20, RIGHT - 4, FLOOR + 25)));
        return boxes;
    }

    /** The piece at a place; empty where there is none. */
    public static Optional<Piece> at(double x, double y) {
        for (Piece piece : Piece.values()) {
            if (BOXES.get(piece).stream().anyMatch(box -> box.grown(0.3).contains(x, y))) {
                return Optional.of(piece);
            }
        }
        return Optional.empty();
    }

    /** A place inside of a piece. */
    static Box place(Piece piece) {
        return BOXES.get(piece).get(0);
    }

    /**
     * Paints it.
     *
     * @param pointed the piece that stands out
     */
    public static void paint(ThemedPen pen, Optional<Piece> pointed) {
        pen.fill(new Box(0, 0, WIDTH, HEIGHT), Tone.PAPER);
        pen.fill(Box.between(LEFT + WALL, 116, RIGHT - WALL, FLOOR - WALL), Tone.LEVEL_GROUND);
        for (Piece piece : Piece.values()) {
            for (Box box : BOXES.get(piece)) {
                pen.plate(box, 1, piece.tone, Tone.EDGE, 0.8);
            }
        }
        pointed.ifPresent(piece -> BOXES.get(piece).forEach(box -> pen.plate(box, 1, piece.tone, Tone.CHOSEN, 3)));
    }
}
