package org.sagwise.picture.bench;

import java.util.List;
import org.sagwise.picture.look.TextStyle;
import org.sagwise.picture.look.Tone;

/**
 * The figures beside a part.
 *
 * @param rows from top to bottom
 */
record Caption(List<Row> rows) {

    /** A line of pieces, each in its own style. */
    record Row(List<Piece> pieces) {

        static Row of(Piece... pieces) {
            return new Row(List.of(pieces));
        }

        static Row of(String text, TextStyle style, Tone tone) {
            return of(new Piece(text, style, tone));
        }

        double width(double textScale) {
            double width = 0;
            for (Piece piece : pieces) {
                width += piece.style().width(piece.text(), textScale);
            }
            return width + GAP * textScale * (pieces.size() - 1);
        }

        double height(double textScale) {
            return pieces.stream()
                    .mapToDouble(piece -> piece.style().lineHeight(textScale))
                    .max()
                    .orElse(0);
        }
    }

    /** Some words in one style. */
    record Piece(String text, TextStyle style, Tone tone) {}

    /** Distance between pieces of a row. */
    static final double GAP = 5;

    double height(double textScale) {
        return rows.stream().mapToDouble(row -> row.height(textScale)).sum();
    }
}
