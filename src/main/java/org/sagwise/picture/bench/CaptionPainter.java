package org.sagwise.picture.bench;

import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.layout.LabelSide;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.pen.Align;

/** Writes captions into the place that the layout keeps for them. */
final class CaptionPainter {

    private static final double ASCENT = 0.92;

    private final ThemedPen pen;

    CaptionPainter(ThemedPen pen) {
        this.pen = pen;
    }

    void paint(PartBox box, Caption caption) {
        double scale = pen.textScale();
        GridBox place = box.label();
        double height = caption.height(scale);
        double fit = Math.min(1, place.height() / height);
        double y = top(box.side(), place, height * fit);
        for (Caption.Row row : caption.rows()) {
            double rowHeight = row.height(scale) * fit;
            write(row, box.side(), place, y + ASCENT * rowHeight * 0.88);
            y += rowHeight;
        }
    }

    private static double top(LabelSide side, GridBox place, double height) {
        return switch (side) {
            case ABOVE -> place.bottom() - height;
            case BELOW -> place.y();
            case LEFT, RIGHT -> place.middleY() - height / 2;
        };
    }

    /** A row, made narrower as a whole where it is too wide for its place. */
    private void write(Caption.Row row, LabelSide side, GridBox place, double baseline) {
        double width = row.width(pen.textScale());
        double fit = Math.min(1, place.width() / width);
        double left = switch (side) {
            case LEFT -> place.right() - fit * width;
            case RIGHT -> place.x();
            case ABOVE, BELOW -> place.middleX() - fit * width / 2;
        };
        pen.scaled(fit, left, baseline, () -> {
            double x = 0;
            for (Caption.Piece piece : row.pieces()) {
                if (pen.canBeRead(piece.style())) {
                    pen.text(piece.text(), x, 0, piece.style(), piece.tone(), Align.LEFT);
                }
                x += piece.style().width(piece.text(), pen.textScale());
                x += Caption.GAP * pen.textScale();
            }
        });
    }
}
