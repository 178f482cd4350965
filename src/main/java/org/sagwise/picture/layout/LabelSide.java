package org.sagwise.picture.layout;

import java.util.List;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.GridBox;

/** On which side of a part its figures stand. */
public enum LabelSide {
    ABOVE,
    BELOW,
    LEFT,
    RIGHT;

    private static final int GAP = 8;

    /** The sides where the figures of a part may stand, the best first. */
    static List<LabelSide> choices(PartKind kind, int quarters, Drawing drawing) {
        boolean turned = quarters % 2 != 0;
        return switch (kind.role()) {
            case SOURCE -> turned ? List.of(ABOVE, BELOW) : List.of(LEFT, RIGHT);
            case LOAD -> turned ? List.of(BELOW, ABOVE) : List.of(RIGHT, LEFT);
            case IN_LINE -> turned ? List.of(RIGHT, LEFT) : List.of(BELOW, ABOVE);
            case CONVERTER -> List.of(BELOW, ABOVE);
            case METER ->
                drawing == Drawing.SCHEMATIC
                        ? turned ? List.of(RIGHT, LEFT) : List.of(BELOW, ABOVE)
                        : turned ? List.of(ABOVE, BELOW) : List.of(ABOVE, RIGHT, LEFT);
        };
    }

    /** Place for the figures of a part with this outline on this side. */
    GridBox place(PartKind kind, GridBox body, Sizes sizes) {
        double textScale = sizes.textScale();
        boolean beside = this == LEFT || this == RIGHT;
        int width = scaled(beside ? besideWidth(kind) : acrossWidth(kind), textScale);
        int height = scaled(beside ? besideHeight(kind) : acrossHeight(kind, sizes.drawing()), textScale);
        int middleX = (int) body.middleX() - width / 2;
        int middleY = (int) body.middleY() - height / 2;
        return switch (this) {
            case ABOVE -> new GridBox(middleX, body.y() - GAP - height, width, height);
            case BELOW -> new GridBox(middleX, body.y() + body.height() + GAP, width, height);
            case LEFT -> new GridBox(body.x() - GAP - width, middleY, width, height);
            case RIGHT -> new GridBox(body.x() + body.width() + GAP, middleY, width, height);
        };
    }

    private static int scaled(int length, double textScale) {
        return (int) Math.ceil(length * textScale);
    }

    private static int besideWidth(PartKind kind) {
        return switch (kind) {
            case CELL -> 112;
            case COIL -> 150;
            default -> 116;
        };
    }

    private static int besideHeight(PartKind kind) {
        return switch (kind) {
            case CELL -> 130;
            case COIL -> 104;
            default -> 60;
        };
    }

    private static int acrossWidth(PartKind kind) {
        return switch (kind) {
            case CELL -> 220;
            case COIL -> 180;
            default -> 150;
        };
    }

    private static int acrossHeight(PartKind kind, Drawing drawing) {
        return switch (kind) {
            case CELL -> 48;
            case COIL -> 66;
            case METER -> drawing == Drawing.BENCH ? 22 : 42;
            default -> 42;
        };
    }
}
