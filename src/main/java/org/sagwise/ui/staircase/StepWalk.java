package org.sagwise.ui.staircase;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.sagwise.interaction.Selection;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Step;
import org.sagwise.ui.document.BenchModel;

/** Walks the staircase step by step with the arrow keys. */
final class StepWalk {

    private final BenchModel bench;

    StepWalk(BenchModel bench) {
        this.bench = bench;
    }

    void pressed(KeyEvent event) {
        if (event.getCode() == KeyCode.RIGHT || event.getCode() == KeyCode.LEFT) {
            walk(event.getCode() == KeyCode.RIGHT ? 1 : -1);
            event.consume();
        } else if (event.getCode() == KeyCode.ESCAPE) {
            bench.spotlight().clear();
            event.consume();
        }
    }

    private void walk(int direction) {
        List<Selection> stops = stops(bench.assessment().staircase());
        if (stops.isEmpty()) {
            return;
        }
        int at = stops.indexOf(bench.spotlight().lit());
        int next = at < 0 && direction < 0 ? stops.size() - 1 : at + direction;
        bench.spotlight().show(stops.get(Math.floorMod(next, stops.size())));
    }

    /** Each part and link once, those of lanes beside the main way last. */
    private static List<Selection> stops(Staircase staircase) {
        List<Step> steps = new ArrayList<>(staircase.steps());
        staircase.lanes().forEach(lane -> steps.addAll(lane.steps()));
        return steps.stream().map(StaircaseView::lit).distinct().toList();
    }
}
