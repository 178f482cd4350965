package org.sagwise.ui;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.IntConsumer;
import java.util.function.IntPredicate;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;

/**
 * Works the real window as a person does and records what its frames cost. Started by
 * scripts/frames on a display of its own.
 */
public final class FrameRecorder extends Application {

    private static final double NANO = 1e-9;

    /** Frames before a task is recorded, so that the JVM has compiled what it needs, s. */
    private static final double WARM_UP_S = 4;

    /** Frames from one thing that a hand does to the next. */
    private static final int HAND = 6;

    private static final int PRESS = 30;

    /** Frames from one turn of the button to the next where nothing but those frames is asked about. */
    private static final int TURN = 5;

    /** What is done this often has been compiled as well as it will be. */
    private static final int WARM_FRAMES = 400;

    /** Something to do, frame by frame. */
    private record Task(String name, Runnable begin, IntConsumer frame, Runnable end, IntPredicate counts) {

        Task(String name, Runnable begin, IntConsumer frame, Runnable end) {
            this(name, begin, frame, end, n -> true);
        }

        Task(String name, IntConsumer frame) {
            this(name, () -> {}, frame, () -> {});
        }
    }

    private final SagwiseApp app = new SagwiseApp();
    private final Deque<Task> tasks = new ArrayDeque<>();
    private final Robot[] robot = new Robot[1];
    private List<Node> cells = List.of();
    private Stage stage;
    private FrameLog log;
    private double recordS;
    private long begun;
    private long recorded;
    private boolean warm;
    private int frame;

    @Override
    public void start(Stage first) {
        stage = first;
        List<String> arguments = getParameters().getRaw();
        recordS = Double.parseDouble(arguments.get(2));
        List<String> chosen = arguments.subList(3, arguments.size());
        tasks().stream()
                .filter(task -> chosen.isEmpty() || chosen.contains(task.name()))
                .forEach(tasks::add);
        robot[0] = new Robot();
        robot[0].mouseMove(600, 4);
        app.open(stage, List.of(arguments.get(0)), Optional.empty(), "");
        log = new FrameLog();
        System.out.println(FrameLog.heading());
        new AnimationTimer() {
            @Override
            public void handle(long now) {
                beat(now);
            }
        }.start();
    }

    private List<Task> tasks() {
        return List.of(
                new Task("still", n -> {}),
                new Task("pointing", this::point),
                new Task("walking", this::walk),
                new Task("held", this::latch, n -> {}, this::latch),
                new Task("held-pointing", this::latch, this::point, this::latch),
                new Task("pressing", () -> {}, this::press, this::letGo),
                new Task("turning", () -> {}, this::turn, this::letGo, n -> n % TURN == 0),
                new Task("clock", () -> fire("clock-go"), n -> {}, () -> fire("clock-go")),
                new Task("clock-held", this::goHeld, n -> {}, this::goHeld),
                new Task("dragging", this::lift, this::drag, this::putBack),
                new Task("panning", this::toBench, this::pan, this::leaveBench),
                new Task("zooming", this::latch, this::zoom, this::latch));
    }

    private void beat(long now) {
        Task task = tasks.peek();
        if (task == null) {
            Platform.exit();
            return;
        }
        if (begun == 0) {
            begun = now;
            warm = false;
            frame = 0;
            task.begin().run();
        }
        double passedS = (now - begun) * NANO;
        if (!warm && passedS > WARM_UP_S && frame > WARM_FRAMES) {
            warm = true;
            recorded = now;
            log.restart();
        }
        log.frame(now, task.counts().test(frame - 1));
        if (warm && (now - recorded) * NANO > recordS) {
            System.out.println(log.summary(task.name()));
            task.end().run();
            tasks.poll();
            begun = 0;
        } else {
            task.frame().accept(frame++);
        }
    }

    /** Goes from part to part with the mouse. */
    private void point(int n) {
        if (n % HAND == 0) {
            moveTo(part(n / HAND));
        }
    }

    /** Goes from part to part with the keyboard. */
    private void walk(int n) {
        if (n % HAND == 0) {
            part(n / HAND).requestFocus();
        }
    }

    private void latch() {
        moveTo(node("staircase"));
        robot[0].mouseMove(600, 4);
        fire("latch");
    }

    private void goHeld() {
        latch();
        fire("clock-go");
    }

    private void press(int n) {
        if (n % PRESS == 0) {
            fire("latch");
        }
    }

    private void turn(int n) {
        if (n % TURN == 0) {
            fire("latch");
        }
    }

    private void letGo() {
        if (((ToggleButton) node("latch")).isSelected()) {
            fire("latch");
        }
    }

    private void lift() {
        moveTo(part(0));
        robot[0].mousePress(MouseButton.PRIMARY);
    }

    private void drag(int n) {
        Bounds there = part(0).localToScreen(part(0).getBoundsInLocal());
        robot[0].mouseMove(
                there.getCenterX() + 40 * Math.sin(n / 20.0), there.getCenterY() + 40 * (1 - Math.cos(n / 20.0)));
    }

    private void putBack() {
        robot[0].keyType(KeyCode.ESCAPE);
        robot[0].mouseRelease(MouseButton.PRIMARY);
    }

    private void toBench() {
        fire("latch");
        moveTo(node("bench"));
    }

    private void pan(int n) {
        robot[0].mouseWheel(n / PRESS % 2 == 0 ? 1 : -1);
    }

    private void leaveBench() {
        latch();
        robot[0].keyType(KeyCode.ESCAPE);
    }

    private void zoom(int n) {
        if (n % HAND == 0) {
            MenuItem item = item(n / HAND % 8 < 4 ? "item-zoom-in" : "item-zoom-out");
            Platform.runLater(item::fire);
        }
    }

    private MenuItem item(String id) {
        return MenuItems.item(node("menus"), id);
    }

    private void moveTo(Node node) {
        Bounds there = node.localToScreen(node.getBoundsInLocal());
        robot[0].mouseMove(there.getCenterX(), there.getCenterY());
    }

    private Node part(int number) {
        if (cells.isEmpty()) {
            cells = node("bench").lookupAll(".touch").stream()
                    .filter(each -> each.getId().startsWith("part-c"))
                    .toList();
        }
        return cells.get(number % cells.size());
    }

    private void fire(String id) {
        ((ButtonBase) node(id)).fire();
    }

    private Node node(String id) {
        return stage.getScene().lookup("#" + id);
    }

    @Override
    public void stop() {
        app.stop();
    }
}
