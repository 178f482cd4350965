package org.sagwise.ui.gui;

import java.util.Set;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.stage.Window;
import org.testfx.api.FxRobot;
import org.testfx.robot.ClickRobot;
import org.testfx.robot.DragRobot;
import org.testfx.robot.KeyboardRobot;
import org.testfx.robot.Motion;
import org.testfx.robot.MouseRobot;
import org.testfx.robot.MoveRobot;
import org.testfx.robot.SleepRobot;
import org.testfx.robot.TypeRobot;
import org.testfx.robot.impl.ClickRobotImpl;
import org.testfx.robot.impl.DragRobotImpl;
import org.testfx.robot.impl.KeyboardRobotImpl;
import org.testfx.robot.impl.MouseRobotImpl;
import org.testfx.robot.impl.MoveRobotImpl;
import org.testfx.robot.impl.TypeRobotImpl;
import org.testfx.service.query.PointQuery;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A robot of TestFX that waits, after each stir of key or mouse, until the window has done what it had to and was drawn
 * once, where the library's own sleeps for a fixed time: on a quick machine less, on a busy one more.
 */
final class QuickRobot extends FxRobot {

    private final Mouse mouse = new Mouse(new MouseRobotImpl(robotContext().getBaseRobot()));
    private final Keyboard keyboard =
            new Keyboard(new KeyboardRobotImpl(robotContext().getBaseRobot()));
    private final MoveRobot moves = new MoveRobotImpl(robotContext().getBaseRobot(), mouse, new NoSleep());
    private final ClickRobot clicks =
            new ClickRobotImpl(mouse, moves, robotContext().getSleepRobot());
    private final DragRobot drags = new DragRobotImpl(mouse, moves);
    private final TypeRobot types = new TypeRobotImpl(keyboard, new NoSleep());

    /** Until what was to be done in the window is done, and what follows from it, and all of it was drawn. */
    static void settle() {
        pause();
        pause();
    }

    private static void pause() {
        doWhatWaits();
        CountDownLatch drawn = new CountDownLatch(1);
        Platform.runLater(() -> new AnimationTimer() {
            @Override
            public void handle(long now) {
                stop();
                drawn.countDown();
            }
        }.start());
        await(drawn);
        doWhatWaits();
    }

    /** What is done later may leave more to do later still. */
    private static void doWhatWaits() {
        for (int i = 0; i < 3; i++) {
            CountDownLatch done = new CountDownLatch(1);
            Platform.runLater(done::countDown);
            await(done);
        }
    }

    private static void await(CountDownLatch latch) {
        try {
            if (!latch.await(30, TimeUnit.SECONDS)) {
                throw new IllegalStateException("the window does not answer");
            }
        } catch (InterruptedException e) {
            throw new IllegalStateException(e);
        }
    }

    private record NoSleep() implements SleepRobot {

        @Override
        public void sleep(long milliseconds) {}

        @Override
        public void sleep(long duration, TimeUnit unit) {}
    }

    private record Mouse(MouseRobot robot) implements MouseRobot {

        @Override
        public void press(MouseButton... buttons) {
            robot.pressNoWait(buttons);
            pause();
        }

        @Override
        public void pressNoWait(MouseButton... buttons) {
            robot.pressNoWait(buttons);
        }

        @Override
        public Set<MouseButton> getPressedButtons() {
            return robot.getPressedButtons();
        }

        @Override
        public void release(MouseButton... buttons) {
            robot.releaseNoWait(buttons);
            pause();
        }

        @Override
        public void releaseNoWait(MouseButton... buttons) {
            robot.releaseNoWait(buttons);
        }

        @Override
        public void move(Point2D location) {
            robot.moveNoWait(location);
            pause();
        }

        @Override
        public void moveNoWait(Point2D location) {
            robot.moveNoWait(location);
        }

        @Override
        public void scroll(int wheelAmount) {
            robot.scrollNoWait(wheelAmount);
            pause();
        }

        @Override
        public void scrollNoWait(int wheelAmount) {
            robot.scrollNoWait(wheelAmount);
        }
    }

    private record Keyboard(KeyboardRobot robot) implements KeyboardRobot {

        @Override
        public void press(KeyCode... keys) {
            robot.pressNoWait(keys);
            pause();
        }

        @Override
        public void pressNoWait(KeyCode... keys) {
            robot.pressNoWait(keys);
        }

        @Override
        public Set<KeyCode> getPressedKeys() {
            return robot.getPressedKeys();
        }

        @Override
        public void release(KeyCode... keys) {
            robot.releaseNoWait(keys);
            pause();
        }

        @Override
        public void releaseNoWait(KeyCode... keys) {
            robot.releaseNoWait(keys);
        }
    }

    @Override
    public FxRobot interact(Runnable work) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(work));
        settle();
        return this;
    }

    @Override
    public FxRobot push(KeyCode... combination) {
        types.push(combination);
        return this;
    }

    @Override
    public FxRobot press(KeyCode... keys) {
        keyboard.press(keys);
        return this;
    }

    @Override
    public FxRobot release(KeyCode... keys) {
        keyboard.release(keys);
        return this;
    }

    @Override
    public FxRobot press(MouseButton... buttons) {
        mouse.press(buttons);
        return this;
    }

    @Override
    public FxRobot release(MouseButton... buttons) {
        mouse.release(buttons);
        return this;
    }

    @Override
    public FxRobot clickOn(MouseButton... buttons) {
        clicks.clickOn(buttons);
        return this;
    }

    @Override
    public FxRobot clickOn(PointQuery point, Motion motion, MouseButton... buttons) {
        clicks.clickOn(point, motion, buttons);
        return this;
    }

    @Override
    public FxRobot doubleClickOn(PointQuery point, Motion motion, MouseButton... buttons) {
        clicks.doubleClickOn(point, motion, buttons);
        return this;
    }

    @Override
    public FxRobot moveTo(PointQuery point, Motion motion) {
        moves.moveTo(point, motion);
        return this;
    }

    @Override
    public FxRobot moveBy(double x, double y, Motion motion) {
        moves.moveBy(x, y, motion);
        return this;
    }

    @Override
    public FxRobot drag(PointQuery point, MouseButton... buttons) {
        drags.drag(point, buttons);
        return this;
    }

    @Override
    public FxRobot drop() {
        drags.drop();
        return this;
    }

    @Override
    public FxRobot dropTo(PointQuery point) {
        drags.dropTo(point);
        return this;
    }

    @Override
    public FxRobot dropBy(double x, double y) {
        drags.dropBy(x, y);
        return this;
    }

    @Override
    public FxRobot write(String text) {
        Scene scene = listWindows().stream()
                .filter(Window::isFocused)
                .findFirst()
                .orElseGet(this::targetWindow)
                .getScene();
        for (char sign : text.toCharArray()) {
            robotContext().getBaseRobot().typeKeyboard(scene, KeyCode.UNDEFINED, String.valueOf(sign));
        }
        pause();
        return this;
    }
}
