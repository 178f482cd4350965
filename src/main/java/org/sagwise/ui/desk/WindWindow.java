package org.sagwise.ui.desk;

import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.plan.CoilOnBench;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** A window in which a coil of the bench is wound. */
public final class WindWindow {

    /** What asks for it, in place of a word of the glossary; the id of the coil stands behind it. */
    public static final String ID = "wind-a-coil:";

    private static final double WIDTH = 900;
    private static final double HEIGHT = 640;

    private final Workbench work;
    private final SideWindows windows;
    private final ReadOnlyObjectProperty<AppliedLooks> looks;
    private final Wording wording;
    private Optional<Stage> shown = Optional.empty();

    public WindWindow(
            Workbench work, SideWindows windows, ReadOnlyObjectProperty<AppliedLooks> looks, Wording wording) {
        this.work = work;
        this.windows = windows;
        this.looks = looks;
        this.wording = wording;
    }

    /** Shows it for a coil. */
    public void show(String coil) {
        shown.filter(Stage::isShowing).ifPresent(Stage::close);
        if (work.bench().scenario().part(coil).isEmpty()) {
            return;
        }
        CoilOnBench place = new CoilOnBench(
                work.bench().scenario(), work.bench().assessment().bench().catalogue(), coil);
        Subscriptions subscriptions = new Subscriptions();
        WindPane pane = new WindPane(
                place,
                looks,
                edit -> {
                    shown.ifPresent(Stage::close);
                    work.perform(edit);
                },
                wording,
                subscriptions);
        shown = Optional.of(
                windows.open(wording.say("wind.title"), pane, WIDTH, HEIGHT, Modality.WINDOW_MODAL, subscriptions));
    }
}
