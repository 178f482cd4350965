package org.sagwise.ui.inspector;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.text.Glossary;
import org.sagwise.ui.desk.VaryWindow;
import org.sagwise.ui.desk.WindWindow;
import org.sagwise.ui.kit.LookUp;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WordLinks;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** Everything that can be set about a part. */
final class PartCard extends VBox {

    /** What a model says nothing of, and going back to the model leaves alone. */
    private static final Set<String> OWN = Set.of("model", "charge", "rest_V");

    /** What is seen of a part from outside stands beside its label, where people look for it first. */
    private static final List<String> OUTSIDE = List.of("wrap");

    /** Where the point on the curve is stands under the curve. */
    private static final List<String> POINT = List.of("charge", "rest_V");

    private static final Map<String, String> PULSE = Map.of("pulse_A", "pulse_s", "pulse_s", "pulse_A");

    /** How long a burst commonly is that a maker allows: common practice, no source. */
    private static final double USUAL_PULSE_S = 5;

    private final Workbench work;
    private final String id;
    private final Wording wording;
    private final List<CardRow> rows = new ArrayList<>();
    private final List<GroupRows> groups = new ArrayList<>();
    private final CurvePlot curve;
    private final HealthLines health;
    private final Button reset = new Button();

    /**
     * @param curve where the curve of a cell is shown, of whichever card is open
     */
    PartCard(Workbench work, Part part, CurvePlot curve, Wording wording) {
        this.work = work;
        this.id = part.id();
        this.wording = wording;
        this.curve = curve;
        this.health = new HealthLines(work.bench(), wording);
        getStyleClass().add("part-card");
        Catalogue catalogue = work.bench().assessment().bench().catalogue();
        CardRows maker = new CardRows(catalogue, part.kind(), this::effect, wording);
        Change change = change();
        List<Node> nodes = new ArrayList<>();
        Label title = new Label(new PartTexts(wording).called(part));
        title.getStyleClass().add("section-title");
        nodes.add(title);
        label(part, change).ifPresent(nodes::add);
        Map<String, Node> keys = new LinkedHashMap<>();
        for (KeySpec spec : part.kind().keys()) {
            maker.row(spec, change).ifPresent(row -> {
                rows.add(row);
                keys.put(spec.name(), row);
            });
            if (spec.type() instanceof KeySpec.GroupType type) {
                GroupRows group =
                        new GroupRows(spec, type, usual(spec, part.kind(), catalogue), change, maker, wording);
                groups.add(group);
                keys.put(spec.name(), group);
            }
        }
        move(OUTSIDE, keys, nodes);
        if (part.kind() == PartKind.CELL) {
            nodes.add(curve);
            move(POINT, keys, nodes);
        }
        FlowPane links = new FlowPane();
        links.getStyleClass().add("card-kinds");
        if (part.kind() == PartKind.CELL) {
            links.getChildren().add(link("inside.look", "card-inside", InsideCellWindow.ID));
        }
        if (part.kind() == PartKind.COIL) {
            links.getChildren().add(link("wind.open", "card-wind", WindWindow.ID + part.id()));
        }
        links.getChildren().add(link("vary.open", "card-vary", VaryWindow.ID));
        nodes.add(links);
        nodes.add(health);
        nodes.addAll(keys.values());
        reset.setText(wording.say("card.reset"));
        Tip.put(reset, wording.say("card.reset.tip"));
        reset.setId("card-reset");
        reset.setOnAction(event -> reset());
        nodes.add(reset);
        String said = part.kind().keys().stream()
                .map(spec -> wording.say("key." + spec.name()))
                .collect(Collectors.joining(". ", new PartTexts(wording).kind(part.kind()) + ". ", ""));
        nodes.add(new WordLinks(Glossary.in(wording.locale()).usedIn(said), wording));
        getChildren().setAll(nodes);
        refresh();
    }

    private static void move(List<String> names, Map<String, Node> from, List<Node> to) {
        names.stream().filter(from::containsKey).map(from::remove).forEach(to::add);
    }

    /** A button that looks like a word to follow. */
    private Button link(String key, String buttonId, String wanted) {
        Button link = new Button(wording.say(key));
        link.setId(buttonId);
        link.getStyleClass().add("link-button");
        Tip.put(link, wording.say(key + ".tip"));
        link.setOnAction(event -> fireEvent(new LookUp(wanted)));
        return link;
    }

    private Optional<CardRow> label(Part part, Change change) {
        return ScenarioKeys.ANY_PART.stream()
                .filter(spec -> spec.name().equals("label"))
                .findFirst()
                .map(spec -> {
                    CardRow row = new TextRow(spec, part.id(), change, wording);
                    rows.add(row);
                    return row;
                });
    }

    String part() {
        return id;
    }

    /** Takes over what is written now. */
    void refresh() {
        Part part = part(id);
        rows.forEach(CardRow::refresh);
        groups.forEach(GroupRows::refresh);
        reset.setVisible(part.model().isPresent() && !overridden(part).isEmpty());
        reset.setManaged(reset.isVisible());
        health.show(words -> words.ofPart(id));
        if (part.kind() == PartKind.CELL) {
            curve.show(work.bench().assessment().bench().cells().get(id));
        }
    }

    private Part part(String which) {
        return work.bench().scenario().part(which).orElseThrow();
    }

    private EffectiveKeys effect() {
        return work.bench().assessment().bench().values(id);
    }

    private static Set<String> overridden(Part part) {
        return part.kind().keys().stream()
                .map(KeySpec::name)
                .filter(name -> !OWN.contains(name) && part.keys().has(name))
                .collect(Collectors.toSet());
    }

    private void reset() {
        work.perform(new SetPartKeys(id, Keys.NONE, overridden(part(id))));
    }

    private Change change() {
        return new Change() {
            @Override
            public Keys keys() {
                return part(id).keys();
            }

            @Override
            public List<String> set(String name, Object value) {
                Keys both = Keys.of(name, value);
                if (PULSE.containsKey(name) && !keys().has(PULSE.get(name))) {
                    both = both.with(PULSE.get(name), partner(PULSE.get(name)));
                }
                return work.tryOut(new SetPartKeys(id, both, Set.of()));
            }

            @Override
            public List<String> clear(String name) {
                if (name.equals("wire")) {
                    return set("ohm", ohmNow());
                }
                return work.tryOut(
                        PULSE.containsKey(name)
                                ? SetPartKeys.clear(id, name, PULSE.get(name))
                                : SetPartKeys.clear(id, name));
            }
        };
    }

    /** A burst has amps and seconds, or neither: what the one is when the other is first set. */
    private double partner(String name) {
        return effect().number(name).orElseGet(() -> name.equals("pulse_s") ? USUAL_PULSE_S : cellLimitA());
    }

    private double cellLimitA() {
        return work.bench().assessment().bench().cells().get(id).spec().limitA();
    }

    /** A wound coil that becomes one of plain ohms keeps those that it has. */
    private double ohmNow() {
        return work.bench().assessment().readings().coil(id).orElseThrow().ohm();
    }

    /**
     * What a nested object holds when it is first there: that of the first in the catalogue, without
     * what follows from the rest of the part anyway.
     */
    private static Keys usual(KeySpec spec, PartKind kind, Catalogue catalogue) {
        Keys first = catalogue.models(kind).all().stream()
                .flatMap(model -> model.keys().group(spec.name()).stream())
                .findFirst()
                .orElse(Keys.NONE);
        return first.without(((KeySpec.GroupType) spec.type())
                .keys().stream()
                        .filter(key -> key.usual().isPresent())
                        .map(KeySpec::name)
                        .toArray(String[]::new));
    }
}
