package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.function.BiConsumer;
import java.util.function.Consumer;
import javafx.scene.layout.BorderPane;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DrawerFile;
import org.sagwise.file.UserFolders;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.pack.PackCell;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.SideWindow;
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
    private final Subscriptions kept;
    private Optional<ChoicePane> pane = Optional.empty();
    private final SideWindow window = new SideWindow();

    /**
     * @param opened takes the bench that was chosen
     * @param compared takes two to set beside each other
     * @param kept closes what stays while the window is put aside: the wish and its answer
     */
    public ChoiceWindow(
            SideWindows windows,
            LooksModel looks,
            Consumer<Scenario> opened,
            BiConsumer<Scenario, Scenario> compared,
            Wording wording,
            Subscriptions kept) {
        this.windows = windows;
        this.looks = looks;
        this.opened = opened;
        this.compared = compared;
        this.wording = wording;
        this.kept = kept;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    private Stage open() {
        ChoicePane content = pane.orElseGet(() -> new ChoicePane(
                CatalogueLoader.builtIn(), ChoiceWindow::own, looks, this::lay, compared, wording, kept));
        pane = Optional.of(content);
        Subscriptions subscriptions = new Subscriptions();
        subscriptions.add(content::callOff);
        return windows.open(
                wording.say("choice.title"), new BorderPane(content), WIDTH, HEIGHT, Modality.NONE, subscriptions);
    }

    /** The window makes room for the bench, and shows the same answer when it is called again. */
    private void lay(Scenario bench) {
        window.close();
        opened.accept(bench);
    }

    private static List<PackCell> own() {
        Catalogue catalogue = CatalogueLoader.builtIn();
        DrawerFile file = new DrawerFile(UserFolders.here().data().resolve(DrawerFile.NAME), catalogue);
        return file.open() instanceof DrawerFile.Opened.Ok ok ? PackCell.of(ok.drawer(), catalogue) : List.of();
    }
}
