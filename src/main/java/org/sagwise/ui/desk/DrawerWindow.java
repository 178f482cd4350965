package org.sagwise.ui.desk;

import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.file.DrawerFile;
import org.sagwise.file.UserFolders;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.pairing.DrawerWords;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.ui.desk.DrawerModel.Whose;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** A window beside the bench with a person's own cells. */
public final class DrawerWindow {

    private static final double WIDTH = 1280;
    private static final double HEIGHT = 760;

    private final SideWindows windows;
    private final LooksModel looks;
    private final DrawerLaying laying;
    private final Executor behind;
    private final Wording wording;
    private final SideWindow window = new SideWindow();

    /**
     * @param front brings the window of the bench to the front
     * @param behind computes what takes longer
     */
    public DrawerWindow(
            SideWindows windows, LooksModel looks, Workbench work, Runnable front, Executor behind, Wording wording) {
        this.windows = windows;
        this.looks = looks;
        this.laying = new DrawerLaying(work, front);
        this.behind = behind;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        Catalogue catalogue = laying.work().bench().assessment().bench().catalogue();
        DrawerWords words = new DrawerWords(QuantityFormat.forPeople(wording.locale()), catalogue);
        DrawerModel model = new DrawerModel(
                new DrawerFile(UserFolders.here().data().resolve(DrawerFile.NAME), catalogue),
                catalogue,
                wording::locale);
        DrawerPane pane = new DrawerPane(
                model,
                words,
                new Exports(wording, Optional.empty()),
                laying,
                looks,
                LatestTask.in(behind),
                wording,
                subscriptions);
        Stage stage = windows.open(words.say("window.title"), pane, WIDTH, HEIGHT, Modality.NONE, subscriptions);
        pane.open(Whose.OWN);
        subscriptions.watch(stage.focusedProperty(), here -> {
            if (here) {
                model.lookAround();
            }
        });
        return stage;
    }
}
