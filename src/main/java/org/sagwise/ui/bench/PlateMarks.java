package org.sagwise.ui.bench;

import java.util.List;
import javafx.scene.Group;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Line;
import org.sagwise.picture.geometry.Point;

/** Marks the terminals that one plate will join, and shows the plate to be. */
final class PlateMarks extends Group {

    /** Radius of a mark, in pixels. */
    private static final double MARK = 13;

    private final Group plate = new Group();
    private final Group marks = new Group();

    PlateMarks() {
        setManaged(false);
        plate.getStyleClass().add("plate");
        getChildren().addAll(plate, marks);
    }

    /**
     * Shows it.
     *
     * @param terminals where they are; the plate begins at the first
     */
    void show(List<Point> terminals) {
        plate.getChildren().clear();
        marks.getChildren().clear();
        for (Point terminal : terminals) {
            Point first = terminals.get(0);
            Line line = new Line(first.x(), first.y(), terminal.x(), terminal.y());
            line.getStyleClass().add("plate-line");
            plate.getChildren().add(line);
            Circle mark = new Circle(terminal.x(), terminal.y(), MARK);
            mark.getStyleClass().add("hand-mark");
            marks.getChildren().add(mark);
        }
        setVisible(true);
    }
}
