package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DrawerFile;
import org.sagwise.file.UserFolders;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.pack.PackCell;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** A window in which cells and layout are chosen for a wish. */
public final class ChoiceWindow {

    private static final double WIDTH = 1180;
    private static final double HEIGHT = 660;

    private final SideWindows windows;
    private final LooksModel looks;
    private final Consumer<Scenario> opened;
    private final BiConsumer<Scenario, Scenario> compared;
    private final Wording wording;
    private Optional<Stage> shown = Optional.empty();

    /**
     * @param opened takes the bench that was chosen
     * @param compared takes two to set beside each other
     */
    public ChoiceWindow(
            SideWindows windows,
            LooksModel looks,
            Consumer<Scenario> opened,
            BiConsumer<Scenario, Scenario> compared,
            Wording wording) {
        this.windows = windows;
        this.looks = looks;
        this.opened = opened;
        this.compared = compared;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        shown = Optional.of(shown.filter(Stage::isShowing).orElseGet(this::open));
        shown.get().requestFocus();
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        ChoicePane pane = new ChoicePane(
                CatalogueLoader.builtIn(), ChoiceWindow::own, looks, opened, compared, wording, subscriptions);
        return windows.open(wording.say("choice.title"), pane, WIDTH, HEIGHT, Modality.NONE, subscriptions);
    }

    private static List<PackCell> own() {
        Catalogue catalogue = CatalogueLoader.builtIn();
        DrawerFile file = new DrawerFile(UserFolders.here().data().resolve(DrawerFile.NAME), catalogue);
        return file.open() instanceof DrawerFile.Opened.Ok ok ? PackCell.of(ok.drawer(), catalogue) : List.of();
    }
}
