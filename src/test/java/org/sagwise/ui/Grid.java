package org.sagwise.ui;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.IntConsumer;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.ToggleButton;

/**
 * States of the window that people should have looked at, each reached from whatever was shown
 * before. scripts/screenshots goes through them in many sizes, looks and languages.
 */
final class Grid {

    private static final String LESSON = "06-same-watts";

    private final Consumer<Runnable> steps;
    private final IntConsumer wait;
    private final Consumer<String> take;
    private final Map<String, Runnable> states = new LinkedHashMap<>();

    /**
     * @param steps takes the next step of the walk
     * @param wait lets the window come to rest so many times
     * @param take takes a picture of this name
     */
    Grid(Consumer<Runnable> steps, IntConsumer wait, Consumer<String> take) {
        this.steps = steps;
        this.wait = wait;
        this.take = take;
        states.put("opening", () -> {});
        states.put("newcomer", () -> choose("new"));
        states.put("pair", () -> {
            example("two-cells-side-by-side");
            press("latch");
        });
        states.put("danger", () -> example("side-by-side-one-reversed"));
        states.put("short", () -> {
            example("paper-clip-across-the-coil");
            press("latch");
        });
        states.put("running", this::running);
        states.put("ended", this::ended);
        states.put("lesson-start", () -> choose("lesson-" + LESSON));
        states.put("lesson-question", this::question);
        states.put("lesson-reply", () -> {
            question();
            press("choice-1");
        });
        states.put("compare", () -> {
            example("two-cells-side-by-side");
            choose("compare");
            steps.accept(() -> WindowHands.chooseIn("compare-with", "compare-with-two-in-a-row"));
        });
        states.put("projector", () -> {
            example("two-cells-side-by-side");
            choose("projector");
            press("latch");
        });
        states.put("vary", () -> desk("card-vary"));
        states.put("wind", () -> desk("card-wind"));
        states.put("plan", () -> {
            choose("choose-pack");
            press("choice-do");
            wait.accept(12);
        });
        states.put("drawer", () -> {
            choose("drawer");
            press("drawer-class");
            steps.accept(() -> first("drawer-table"));
        });
        states.put("pairs", () -> {
            choose("drawer");
            press("drawer-class");
            steps.accept(() -> ((TabPane) WindowHands.node("drawer").lookup(".tab-pane"))
                    .getSelectionModel()
                    .select(1));
            wait.accept(8);
        });
        states.put("table", () -> {
            example("two-cells-side-by-side");
            choose("table");
            steps.accept(() -> first("readings-table"));
        });
        states.put("settings", () -> steps.accept(() -> WindowHands.unfold("menu-view")));
        states.put("doors", () -> choose("doors"));
        states.put("about", () -> choose("about"));
        states.put("keys", () -> choose("keys"));
        states.put("manual", () -> choose("manual"));
    }

    /** @param names states, and steps of lessons for a class as {@code LESSON:NUMBER}, with commas between */
    void walk(String names) {
        for (String name : names.split(",")) {
            if (name.contains(":")) {
                step(name.substring(0, name.indexOf(':')), name.substring(name.indexOf(':') + 1));
            } else {
                Optional.ofNullable(states.get(name))
                        .orElseThrow(
                                () -> new IllegalArgumentException("no state: " + name + ", but " + states.keySet()))
                        .run();
            }
            wait.accept(1);
            steps.accept(() -> take.accept(name.replace(':', '-')));
            steps.accept(WindowHands::closeAll);
            leave(name);
        }
    }

    /** A step of a lesson as a class sees it. */
    private void step(String lesson, String number) {
        choose("instructor");
        press("instructor-lesson-" + lesson);
        press("instructor-step-" + number);
        steps.accept(WindowHands::closeAll);
        choose("projector");
    }

    /** What would show in the next picture. */
    private void leave(String name) {
        if (name.contains(":")) {
            choose("projector");
            choose("lesson-leave");
        } else if (name.startsWith("lesson")) {
            choose("lesson-leave");
        } else if (name.equals("projector")) {
            choose("projector");
        } else if (name.equals("running")) {
            press("clock-go");
        }
        steps.accept(Grid::closeCurves);
    }

    private static void closeCurves() {
        WindowHands.find("clock-curves")
                .map(ToggleButton.class::cast)
                .filter(ToggleButton::isSelected)
                .ifPresent(ToggleButton::fire);
    }

    private void running() {
        example("two-cells-side-by-side");
        press("speed-60");
        press("latch");
        press("clock-curves");
        press("clock-go");
        wait.accept(5);
    }

    private void ended() {
        example("two-cells-side-by-side");
        press("clock-run-down");
        wait.accept(4);
    }

    private void question() {
        choose("lesson-" + LESSON);
        for (int i = 0; i < 4; i++) {
            steps.accept(() -> {
                if (WindowHands.find("choice-1").isEmpty()) {
                    WindowHands.find("button-lesson-show").ifPresent(it -> WindowHands.press("button-lesson-show"));
                    WindowHands.press("button-lesson-next");
                }
            });
        }
    }

    /** A window that opens from the card of the coil. */
    private void desk(String button) {
        example("two-cells-side-by-side");
        steps.accept(() -> WindowHands.click("part-coil"));
        wait.accept(1);
        choose("card");
        press(button);
        wait.accept(4);
    }

    private static void first(String table) {
        ((TableView<?>) WindowHands.node(table)).getSelectionModel().select(0);
    }

    private void example(String name) {
        choose("example-" + name);
        wait.accept(1);
    }

    private void choose(String item) {
        steps.accept(() -> WindowHands.choose("item-" + item));
        wait.accept(1);
    }

    private void press(String id) {
        steps.accept(() -> WindowHands.press(id));
    }
}
