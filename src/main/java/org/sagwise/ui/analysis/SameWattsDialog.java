package org.sagwise.ui.analysis;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.plan.PackOutcome;
import org.sagwise.plan.SameWatts;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.ArrangeCells;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.Together;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.EditCommands;
import org.sagwise.ui.workbench.Workbench;

/**
 * Sets the bench as it is beside another layout of its cells with the coil that takes the same
 * watts from it, and changes to that one if wanted.
 */
public final class SameWattsDialog {

    private final Workbench work;
    private final Wording wording;
    private final Scenario now;
    private final Catalogue catalogue;
    private final List<String> cells;
    private final GridPane table = new GridPane();
    private final Label trouble = new Label();
    private final LatestTask task;
    private Optional<Together> change = Optional.empty();

    /** Another layout, what the present one comes to, and which coil the other would need; neither without watts. */
    private record Compared(ArrangeCells arrange, Optional<PackOutcome> before, Optional<SameWatts.Answer> answer) {}

    private SameWattsDialog(Workbench work, Executor behindTheScenes, Wording wording) {
        this.task = LatestTask.in(behindTheScenes);
        this.work = work;
        this.wording = wording;
        this.now = work.bench().scenario();
        this.catalogue = work.bench().assessment().bench().catalogue();
        this.cells = EditCommands.cells(work);
    }

    /**
     * @param behindTheScenes where it is worked out
     */
    public static void show(Workbench work, Executor behindTheScenes, Dialogs dialogs) {
        new SameWattsDialog(work, behindTheScenes, dialogs.wording()).ask(dialogs);
    }

    private void ask(Dialogs dialogs) {
        Label words = new Label(wording.say("watts.text"));
        words.setWrapText(true);
        trouble.setWrapText(true);
        trouble.setId("watts-trouble");
        table.setId("watts-table");
        table.getStyleClass().add("watts-table");
        ToggleGroup group = new ToggleGroup();
        FlowPane bar = new FlowPane();
        bar.getStyleClass().add("card-kinds");
        for (int rows : ArrangeCells.choices(cells.size())) {
            ToggleButton button = new ToggleButton(ArrangeCells.shortName(cells.size(), rows));
            button.setId("watts-" + button.getText().toLowerCase(Locale.ROOT));
            button.setToggleGroup(group);
            button.setOnAction(event -> {
                button.setSelected(true);
                compare(rows);
            });
            bar.getChildren().add(button);
        }
        group.selectToggle(group.getToggles().get(group.getToggles().size() - 1));
        compare(cells.size());
        VBox content =
                new VBox(words, bar, table, trouble, new WorkLine("watts", task, trouble, wording).keepingRoom());
        content.getStyleClass().add("dialog-words");
        ButtonType agree = dialogs.agree("watts.do");
        dialogs.ask("watts-dialog", wording.say("watts.title"), content, List.of(agree, dialogs.leave("dialog.cancel")))
                .filter(agree::equals)
                .flatMap(agreed -> change)
                .ifPresent(work::perform);
        task.callOff();
    }

    private void compare(int rows) {
        change = Optional.empty();
        table.getChildren().clear();
        trouble.setText("");
        agreeable();
        ArrangeCells arrange = new ArrangeCells(cells, rows, JointChoice.CONTACT_MOHM);
        task.ask(() -> compared(arrange), this::answer);
    }

    /** One can agree only to what was found, and sees all of it; there is no window yet when it is first asked. */
    private void agreeable() {
        Platform.runLater(() -> Optional.ofNullable(table.getScene()).ifPresent(scene -> {
            scene.lookup("#watts-dialog-ok_done").setDisable(change.isEmpty());
            scene.getWindow().sizeToScene();
        }));
    }

    private Compared compared(ArrangeCells arrange) {
        Optional<PackOutcome> before = PackOutcome.of(now, catalogue).filter(it -> it.coilW() > 0);
        return new Compared(
                arrange, before, before.map(it -> SameWatts.coilFor(arrange.apply(now), catalogue, it.coilW())));
    }

    private void answer(Compared compared) {
        SameWatts.Answer answer = compared.answer().orElse(null);
        if (answer == null) {
            trouble.setText(wording.say("watts.none"));
        } else if (answer instanceof SameWatts.Answer.Found found) {
            String coil = now.partsOf(PartKind.COIL).stream()
                    .map(Part::id)
                    .findFirst()
                    .get();
            change = Optional.of(new Together(List.of(compared.arrange(), SetPartKeys.set(coil, "ohm", found.ohm()))));
            fill(compared.before().orElseThrow(), found.scenario());
        } else if (answer instanceof SameWatts.Answer.TooMuch most) {
            trouble.setText(wording.say("watts.too-much", wording.quantity(most.mostW(), Unit.WATT)));
        } else {
            trouble.setText(wording.say("watts.no-answer"));
        }
        agreeable();
    }

    private void fill(PackOutcome before, Scenario other) {
        PackOutcome after = PackOutcome.of(other, catalogue).orElseThrow();
        table.addRow(0, new Label(), heading("watts.now"), heading("watts.then"));
        row(1, "watts.power", before.coilW(), after.coilW(), Unit.WATT);
        table.addRow(
                2,
                new Label(wording.say("watts.ohm")),
                number(wording.quantity(before.coilOhm(), Unit.OHM), "watts-ohm-now"),
                number(wording.say("watts.about", wording.quantity(after.coilOhm(), Unit.OHM)), "watts-ohm-then"));
        row(3, "watts.volts", before.coilV(), after.coilV(), Unit.VOLT);
        row(4, "watts.amps", before.coilA(), after.coilA(), Unit.AMPERE);
        row(5, "watts.cell", before.cellA(), after.cellA(), Unit.AMPERE);
        Label lastsNow = number("…", "watts-lasts-now");
        Label lastsThen = number("…", "watts-lasts-then");
        table.addRow(6, new Label(wording.say("watts.lasts")), lastsNow, lastsThen);
        // A whole run-down takes its time; it comes when it is worked out.
        task.ask(
                () -> Stream.of(now, other)
                        .map(it -> PackOutcome.lastsS(it, catalogue))
                        .toList(),
                lasts -> {
                    lastsNow.setText(wording.quantity(lasts.get(0), Unit.SECOND));
                    lastsThen.setText(wording.quantity(lasts.get(1), Unit.SECOND));
                });
    }

    private Label heading(String key) {
        Label label = new Label(wording.say(key));
        label.getStyleClass().add("section-title");
        return label;
    }

    private void row(int row, String key, double before, double after, Unit unit) {
        String id = key.replace('.', '-');
        table.addRow(
                row,
                new Label(wording.say(key)),
                number(wording.quantity(before, unit), id + "-now"),
                number(wording.quantity(after, unit), id + "-then"));
    }

    private static Label number(String text, String id) {
        Label label = new Label(text);
        label.setId(id);
        label.getStyleClass().add("number");
        return label;
    }
}
