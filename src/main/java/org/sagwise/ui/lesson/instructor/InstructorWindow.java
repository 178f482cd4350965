package org.sagwise.ui.lesson.instructor;

import java.util.function.Function;
import javafx.stage.Stage;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** The instructor's own window, for a screen that the class does not see. */
public final class InstructorWindow {

    private static final double WIDTH = 860;
    private static final double HEIGHT = 640;

    private final SideWindows windows;
    private final Wording wording;
    private final Function<Subscriptions, InstructorView> view;
    private final SideWindow window = new SideWindow();

    /**
     * @param view makes what is in it
     */
    public InstructorWindow(SideWindows windows, Wording wording, Function<Subscriptions, InstructorView> view) {
        this.windows = windows;
        this.wording = wording;
        this.view = view;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        return windows.openApart(
                wording.say("instructor.title"), view.apply(subscriptions), WIDTH, HEIGHT, subscriptions);
    }
}
