package org.sagwise.ui.clock;

import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.paint.Color;
import org.sagwise.part.PartKind;
import org.sagwise.picture.look.Series;
import org.sagwise.picture.pen.Colour;
import org.sagwise.reading.Bench;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.CourseCharts;
import org.sagwise.scenario.Part;
import org.sagwise.ui.kit.Tip;

/** Which line is which part; pressing an entry hides its lines or shows them again. */
final class PartLegend extends HBox {

    private static final double LINE_LENGTH = 30;
    private static final double LINE_HEIGHT = 10;

    private final ClockTexts texts;
    private final Runnable changed;
    private final Set<String> hidden = new TreeSet<>();
    private List<Part> parts = List.of();

    /**
     * @param changed hears that parts were hidden or shown
     */
    PartLegend(ClockTexts texts, Runnable changed) {
        this.texts = texts;
        this.changed = changed;
        setId("curves-legend");
        getStyleClass().add("curves-legend");
    }

    /** Ids of parts that are not shown. */
    Set<String> hidden() {
        return Collections.unmodifiableSet(hidden);
    }

    /** Takes over what lies on a bench. */
    void show(Bench bench) {
        List<Part> now = CourseCharts.parts(bench);
        if (now.equals(parts)) {
            return;
        }
        parts = now;
        hidden.retainAll(parts.stream().map(Part::id).toList());
        getChildren().clear();
        for (int place = 0; place < parts.size(); place++) {
            getChildren().add(entry(parts.get(place), CourseCharts.series(place)));
        }
        int all = bench.scenario().partsOf(PartKind.CELL).size()
                + bench.scenario().partsOf(PartKind.COIL).size();
        setAccessibleText(texts.word("curves.some", parts.size(), all));
    }

    private ToggleButton entry(Part part, Series series) {
        String name = texts.label(part);
        ToggleButton entry = new ToggleButton(name, sample(series));
        entry.setId("curve-of-" + part.id());
        entry.getStyleClass().add("legend-entry");
        entry.setSelected(!hidden.contains(part.id()));
        Tip.put(entry, texts.word("curves.entry.tip", name));
        entry.setOnAction(event -> {
            if (entry.isSelected()) {
                hidden.remove(part.id());
            } else {
                hidden.add(part.id());
            }
            changed.run();
        });
        return entry;
    }

    private static Canvas sample(Series series) {
        Canvas canvas = new Canvas(LINE_LENGTH, LINE_HEIGHT);
        GraphicsContext pen = canvas.getGraphicsContext2D();
        Colour colour = series.colour();
        pen.setStroke(Color.rgb(colour.red(), colour.green(), colour.blue()));
        pen.setLineWidth(2.5);
        pen.setLineDashes(series.dashes());
        pen.strokeLine(0, LINE_HEIGHT / 2, LINE_LENGTH, LINE_HEIGHT / 2);
        return canvas;
    }
}
