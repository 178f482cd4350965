package org.sagwise.ui.bench;

import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.layout.StackPane;
import org.sagwise.picture.geometry.Box;
import org.sagwise.ui.kit.Subscriptions;

/** The bench with a hint on it: at its top, or at its foot where that covers fewer parts. */
public final class HintedFelt extends StackPane {

    private final BenchPane bench;
    private final NextStepHint hint;
    private final ViewModel view;

    public HintedFelt(BenchPane bench, NextStepHint hint, ViewModel view, Subscriptions subscriptions) {
        super(bench, hint);
        this.bench = bench;
        this.hint = hint;
        this.view = view;
        setAlignment(hint, Pos.TOP_CENTER);
        setMinWidth(0);
        subscriptions.onChange(view.property(), this::requestLayout);
    }

    @Override
    protected void layoutChildren() {
        boolean low = hint.isVisible() && covered(VPos.BOTTOM) < covered(VPos.TOP);
        setAlignment(hint, low ? Pos.BOTTOM_CENTER : Pos.TOP_CENTER);
        hint.standLow(low);
        super.layoutChildren();
    }

    /** How much of outlines and figures lies under the hint at one end, in square pixels. */
    private double covered(VPos end) {
        double width = Math.min(getWidth(), hint.prefWidth(-1));
        double height = hint.prefHeight(width) + hint.gap();
        Box strip = new Box((getWidth() - width) / 2, end == VPos.TOP ? 0 : getHeight() - height, width, height);
        return bench.seen().parts().stream()
                .flatMap(part -> Stream.of(part.body(), part.label()))
                .map(area -> strip.common(view.get().toWindow(area.box())))
                .mapToDouble(Box::area)
                .sum();
    }
}
