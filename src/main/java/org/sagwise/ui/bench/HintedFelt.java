package org.sagwise.ui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.geometry.Pos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.layout.NoteBox;
import org.sagwise.ui.kit.Subscriptions;

/**
 * The benches with what there is to say lying on them, so that nothing moves when a message comes or
 * goes: at their top, or elsewhere along their edge where that covers fewer parts.
 */
public final class HintedFelt extends StackPane {

    /** Where messages can lie, the best first. */
    private static final List<Pos> PLACES =
            List.of(Pos.TOP_CENTER, Pos.BOTTOM_CENTER, Pos.TOP_RIGHT, Pos.TOP_LEFT, Pos.BOTTOM_RIGHT, Pos.BOTTOM_LEFT);

    /** Messages change places only where that uncovers at least this share. */
    private static final double WORTH_MOVING = 0.75;

    private final BenchPane bench;
    private final ViewModel view;
    private final VBox messages = new VBox();
    private Pos place = Pos.TOP_CENTER;

    /**
     * @param benches the bench, and what stands beside it
     * @param said what may have to be said, the gravest first
     * @param lying changes with whatever lies on the bench
     */
    public HintedFelt(
            Region benches,
            BenchPane bench,
            List<Region> said,
            ViewModel view,
            ObservableValue<?> lying,
            Subscriptions subscriptions) {
        super(benches);
        this.bench = bench;
        this.view = view;
        messages.getChildren().setAll(said);
        messages.setId("messages");
        messages.getStyleClass().add("messages");
        messages.setPickOnBounds(false);
        messages.setMaxHeight(USE_PREF_SIZE);
        getChildren().add(messages);
        setMinWidth(0);
        setMinHeight(0);
        subscriptions.onChange(view.property(), this::requestLayout);
        subscriptions.onChange(lying, this::requestLayout);
    }

    @Override
    protected void layoutChildren() {
        boolean any = messages.getChildren().stream().anyMatch(Node::isManaged);
        messages.setVisible(any);
        if (any) {
            Pos best = PLACES.stream()
                    .min(Comparator.comparingDouble(this::covered))
                    .orElse(Pos.TOP_CENTER);
            place = covered(best) < WORTH_MOVING * covered(place) ? best : place;
        } else {
            place = Pos.TOP_CENTER;
        }
        // Told again what is so already, it would be laid out once more in the next frame.
        if (getAlignment(messages) != place) {
            messages.setAlignment(place);
            setAlignment(messages, place);
        }
        double width = any ? Math.min(getWidth(), widest()) : 0;
        if (width != messages.getMaxWidth()) {
            messages.setMaxWidth(width);
        }
        super.layoutChildren();
    }

    private double widest() {
        double inner = messages.getChildren().stream()
                .filter(Node::isManaged)
                .map(Region.class::cast)
                .mapToDouble(each ->
                        each.getMaxWidth() > 0 ? Math.min(each.getMaxWidth(), each.prefWidth(-1)) : each.prefWidth(-1))
                .max()
                .orElse(0);
        return inner + messages.snappedLeftInset() + messages.snappedRightInset();
    }

    /** How much of outlines, figures and tools lies under the messages at a place, in square pixels. */
    private double covered(Pos at) {
        double width = Math.min(getWidth(), widest());
        double height = messages.prefHeight(width);
        double x = switch (at.getHpos()) {
            case LEFT -> 0;
            case RIGHT -> getWidth() - width;
            case CENTER -> (getWidth() - width) / 2;
        };
        double y = at.getVpos() == VPos.TOP ? 0 : getHeight() - height;
        Box taken = new Box(x, y, width, height);
        Stream<GridBox> parts = bench.seen().parts().stream().flatMap(part -> Stream.of(part.body(), part.label()));
        Stream<GridBox> notes = bench.seen().notes().stream().map(NoteBox::box);
        Stream<Box> lying = Stream.concat(parts, notes).map(area -> view.get().toWindow(area.box()));
        return Stream.concat(lying, bench.tools().stream())
                .map(taken::common)
                .mapToDouble(Box::area)
                .sum();
    }
}
