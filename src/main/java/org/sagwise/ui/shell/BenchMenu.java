package org.sagwise.ui.shell;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javafx.beans.value.ObservableValue;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import org.sagwise.interaction.JointChoice;
import org.sagwise.part.MeterMode;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.MeterCommands;
import org.sagwise.ui.workbench.Workbench;

/**
 * The menu of the bench. It holds what the row of hands holds, which a low bench has no room for.
 */
final class BenchMenu {

    private BenchMenu() {}

    static Menu of(Commands commands, Models models, Controls controls, Wording wording, Subscriptions subscriptions) {
        return controls.menu(
                "bench",
                controls.check(commands.latch(), models.bench().button().latchedProperty()),
                joints(models.work(), controls, wording, subscriptions),
                meter(models.bench(), commands.edits().meter(), controls),
                controls.line(),
                controls.item(commands.fit()),
                controls.item(commands.zoomIn()),
                controls.item(commands.zoomOut()),
                controls.line(),
                controls.item(commands.table()),
                controls.item(commands.shares().compare()));
    }

    private static Menu joints(Workbench work, Controls controls, Wording wording, Subscriptions subscriptions) {
        Menu menu = controls.menu("joints");
        for (JointChoice choice : JointChoice.values()) {
            String word = choice.name().toLowerCase(Locale.ROOT);
            RadioMenuItem item = new RadioMenuItem(wording.say("hand.join." + word));
            item.setId("item-join-" + word);
            item.setOnAction(event -> work.hands().setJoint(choice));
            subscriptions.watch(
                    work.movesProperty(), now -> item.setSelected(work.hands().joint() == choice));
            menu.getItems().add(item);
        }
        return menu;
    }

    private static Menu meter(BenchModel bench, MeterCommands meter, Controls controls) {
        List<MenuItem> modes = Stream.of(MeterMode.values())
                .map(mode -> controls.choice(meter.to(mode), isOn(bench, mode)))
                .toList();
        Menu menu = controls.menu("meter", controls.item(meter.red()), controls.item(meter.black()), controls.line());
        menu.getItems().addAll(modes);
        menu.getItems()
                .addAll(
                        controls.line(),
                        controls.item(meter.inLine()),
                        controls.item(meter.writeDown()),
                        controls.item(meter.away()));
        return menu;
    }

    private static ObservableValue<Boolean> isOn(BenchModel bench, MeterMode mode) {
        return bench.assessmentProperty()
                .map(now -> now.scenario()
                        .probes()
                        .filter(probes -> probes.mode() == mode)
                        .isPresent());
    }
}
