package org.sagwise.ui.desk;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.interaction.Selection;
import org.sagwise.part.PartKind;
import org.sagwise.plan.vary.Variable;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** A window in which a reading is seen over a value, over two, and over builds that are not as printed. */
public final class VaryWindow {

    /** What asks for it, in place of a word of the glossary; a key of what is chosen stands behind it. */
    public static final String ID = "vary:";

    private static final double WIDTH = 1040;
    private static final double HEIGHT = 680;

    /** What people change first, of each kind of thing. */
    private static final List<String> FIRST =
            List.of("ohm", "wraps", "charge", "rest_V", "contact_mohm", "contacts_mohm", "length_mm", "volts", "mohm");

    private final Workbench work;
    private final SideWindows windows;
    private final LooksModel looks;
    private final Executor behindTheScenes;
    private final Wording wording;
    private Optional<Stage> shown = Optional.empty();

    public VaryWindow(
            Workbench work, SideWindows windows, LooksModel looks, Executor behindTheScenes, Wording wording) {
        this.work = work;
        this.windows = windows;
        this.looks = looks;
        this.behindTheScenes = behindTheScenes;
        this.wording = wording;
    }

    /** Shows it for what is chosen on the bench. */
    public void show() {
        show("");
    }

    /** Shows it for a key of what is chosen on the bench; empty for whatever is changed first. */
    public void show(String key) {
        Bench bench = work.bench().assessment().bench();
        String owner = owner(bench.scenario());
        show(bench, owner, key, reading(bench, owner));
    }

    /** Shows a reading over whatever is changed first of the thing it is read of, or else of the coil. */
    public void show(NamedReading reading) {
        show(work.bench().assessment().bench(), reading.part(), "", reading);
    }

    private void show(Bench bench, String owner, String key, NamedReading reading) {
        shown.filter(Stage::isShowing).ifPresent(Stage::close);
        if (work.bench().assessment().isVeiled()) {
            return;
        }
        List<Variable> all = VaryForm.variables(bench);
        Optional<Variable> asked = all.stream()
                .filter(it -> it.owner().equals(owner) && it.key().equals(key))
                .findFirst();
        Variable variable = asked.or(() -> first(all, owner))
                .orElseGet(() -> first(all, coil(bench.scenario())).orElse(all.get(all.size() - 1)));
        Subscriptions subscriptions = new Subscriptions();
        VaryPane pane = new VaryPane(
                work.bench(), looks, behindTheScenes, new Exports(wording, Optional.empty()), wording, subscriptions);
        Stage window = windows.open(wording.say("vary.title"), pane, WIDTH, HEIGHT, Modality.NONE, subscriptions);
        pane.ask(reading, variable);
        subscriptions.onChange(work.bench().assessmentProperty(), () -> {
            if (work.bench().assessment().isVeiled()) {
                window.close();
            }
        });
        shown = Optional.of(window);
    }

    private String owner(Scenario scenario) {
        Selection chosen = work.hands().chosen();
        return chosen.parts().stream()
                .findFirst()
                .orElseGet(() -> chosen.links().stream()
                        .filter(at -> at < scenario.links().size())
                        .findFirst()
                        .map(at -> Link.nameOf(scenario.links(), at))
                        .orElse(""));
    }

    private static String coil(Scenario scenario) {
        return scenario.partsOf(PartKind.COIL).stream()
                .findFirst()
                .map(part -> part.id())
                .orElse("");
    }

    private static Optional<Variable> first(List<Variable> all, String owner) {
        return FIRST.stream()
                .flatMap(key -> all.stream()
                        .filter(it -> it.owner().equals(owner) && it.key().equals(key)))
                .findFirst();
    }

    /** Watts of the coil where there is one; amps of a chosen cell. */
    private static NamedReading reading(Bench bench, String owner) {
        String coil = coil(bench.scenario());
        String name = bench.cells().containsKey(owner)
                ? owner + ".current_A"
                : coil.isEmpty() ? "pack.delivered_W" : coil + ".power_W";
        return NamedReading.of(name).orElseThrow();
    }
}
