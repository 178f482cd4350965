package org.sagwise.ui.bench;

import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.ProbeBox;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.workbench.Workbench;

/**
 * What can be done with what is chosen, one click each, beside it on the felt. It stands where it
 * covers least of parts and meter, and shows no tool that would do nothing.
 */
final class ChosenTools extends HBox {

    /** Between what is chosen and its tools, in pixels. */
    private static final double GAP = 14;

    private final Workbench work;

    ChosenTools(Workbench work, Commands commands, Controls controls) {
        this.work = work;
        setId("hand-tools");
        getStyleClass().add("hand-tools");
        setManaged(false);
        commands.row("hand-bar").stream().map(controls::button).forEach(this::add);
    }

    private void add(Button button) {
        button.visibleProperty().bind(button.disabledProperty().not());
        button.managedProperty().bind(button.visibleProperty());
        button.setMinWidth(USE_PREF_SIZE);
        // For keys there are letters, the menus and the menu beside a part; Tab leads on.
        button.setFocusTraversable(false);
        getChildren().add(button);
    }

    /**
     * Goes where it belongs.
     *
     * @param wanted whether anybody wants tools at the moment
     * @param chosen where the view shows what is chosen
     * @param room what is seen of the bench, in pixels
     */
    void place(boolean wanted, Box chosen, Box room, BenchLayout layout, BenchView view) {
        boolean shown =
                wanted && !work.hands().chosen().isNothing() && !work.hands().isBusy();
        setVisible(shown);
        if (!shown) {
            return;
        }
        applyCss();
        double width = Math.min(room.width(), prefWidth(-1));
        double height = prefHeight(width);
        Stream<GridBox> lying = layout.parts().stream().flatMap(part -> Stream.of(part.body(), part.label()));
        List<Box> parts = Stream.concat(lying, layout.probes().map(ProbeBox::card).stream())
                .map(area -> view.toWindow(area.box()))
                .toList();
        Box best = places(chosen, width, height)
                .map(place -> within(place, room))
                .min(Comparator.comparingDouble(place -> covered(place, chosen, parts)))
                .orElseThrow();
        resizeRelocate(best.x(), best.y(), width, height);
    }

    /** Above or below, in the middle or along an edge; then beside. */
    private static Stream<Box> places(Box chosen, double width, double height) {
        double above = chosen.y() - GAP - height;
        double below = chosen.bottom() + GAP;
        double beside = chosen.middleY() - height / 2;
        return Stream.of(
                new Box(chosen.middleX() - width / 2, above, width, height),
                new Box(chosen.x(), above, width, height),
                new Box(chosen.right() - width, above, width, height),
                new Box(chosen.middleX() - width / 2, below, width, height),
                new Box(chosen.x(), below, width, height),
                new Box(chosen.right() - width, below, width, height),
                new Box(chosen.right() + GAP, beside, width, height),
                new Box(chosen.x() - GAP - width, beside, width, height));
    }

    private static Box within(Box place, Box room) {
        double x = Math.max(room.x(), Math.min(room.right() - place.width(), place.x()));
        double y = Math.max(room.y(), Math.min(room.bottom() - place.height(), place.y()));
        return new Box(x, y, place.width(), place.height());
    }

    /** What is chosen itself must not be covered at all, if there is any other place. */
    private static double covered(Box place, Box chosen, List<Box> parts) {
        double others =
                parts.stream().mapToDouble(part -> place.common(part).area()).sum();
        return others + 10 * place.common(chosen).area();
    }
}
