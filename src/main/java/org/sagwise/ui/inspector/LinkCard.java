package org.sagwise.ui.inspector;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.scenario.edit.SetLinkKeys;
import org.sagwise.ui.text.PartTexts;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.Workbench;

/** Everything that can be set about a joint: what it is, how thick, how long. */
final class LinkCard extends VBox {

    private static final Set<String> ENDS = Set.of("from", "to", "id", "model", "x");

    private final Workbench work;
    private final int link;
    private final Wording wording;
    private final ToggleGroup kinds = new ToggleGroup();
    private final VBox values = new VBox();
    private final HealthLines health;
    private final List<CardRow> rows = new ArrayList<>();
    private String shown = "";

    LinkCard(Workbench work, int link, Wording wording) {
        this.work = work;
        this.link = link;
        this.wording = wording;
        this.health = new HealthLines(work.bench(), wording);
        getStyleClass().add("part-card");
        PartTexts texts = new PartTexts(wording);
        Label title = new Label(wording.say(
                "card.joint",
                texts.end(work.bench().scenario(), written().from()),
                texts.end(work.bench().scenario(), written().to())));
        title.setWrapText(true);
        title.getStyleClass().add("section-title");
        FlowPane bar = new FlowPane();
        bar.getStyleClass().add("card-kinds");
        for (JointChoice choice : JointChoice.values()) {
            bar.getChildren().add(kind(choice));
        }
        values.getStyleClass().add("part-card");
        getChildren().setAll(title, bar, health, values);
        refresh();
    }

    private ToggleButton kind(JointChoice choice) {
        String word = choice.name().toLowerCase(Locale.ROOT);
        ToggleButton button = new ToggleButton(wording.say("hand.join." + word));
        button.setId("joint-" + word);
        button.setUserData(choice);
        button.setToggleGroup(kinds);
        button.setOnAction(event -> {
            work.tryOut(new SetLinkKeys(link, choice.joint()));
            refresh();
        });
        return button;
    }

    int link() {
        return link;
    }

    private Link written() {
        return work.bench().scenario().links().get(link);
    }

    private Keys joint() {
        Keys keys = written().keys();
        for (String end : ENDS) {
            keys = keys.without(end);
        }
        return keys;
    }

    private JointChoice choice() {
        return joint().has("jumper")
                ? JointChoice.WIRE
                : joint().has("contact_mohm") ? JointChoice.CONTACT : JointChoice.IDEAL;
    }

    /** Takes over what is written now. */
    void refresh() {
        kinds.getToggles().forEach(each -> each.setSelected(each.getUserData() == choice()));
        if (!shown.equals(choice().name())) {
            shown = choice().name();
            build();
        }
        rows.forEach(CardRow::refresh);
        health.show(words -> words.ofLink(link));
    }

    private void build() {
        rows.clear();
        Bench bench = work.bench().assessment().bench();
        CardRows maker = new CardRows(bench.catalogue(), PartKind.RESISTOR, () -> EffectiveKeys.NONE, wording);
        if (choice() == JointChoice.WIRE) {
            for (KeySpec spec : ScenarioKeys.JUMPER.keys()) {
                if (!spec.name().equals("material")) {
                    maker.row(spec, inWire()).ifPresent(rows::add);
                }
            }
        } else if (choice() == JointChoice.CONTACT) {
            ScenarioKeys.LINK.stream()
                    .filter(spec -> spec.name().equals("contact_mohm"))
                    .findFirst()
                    .flatMap(spec -> maker.row(spec, ofLink()))
                    .ifPresent(rows::add);
        }
        values.getChildren().setAll(rows);
    }

    private Change ofLink() {
        return new Change() {
            @Override
            public Keys keys() {
                return joint();
            }

            @Override
            public List<String> set(String name, Object value) {
                return work.tryOut(new SetLinkKeys(link, joint().with(name, value)));
            }

            @Override
            public List<String> clear(String name) {
                return work.tryOut(new SetLinkKeys(link, joint().without(name)));
            }
        };
    }

    private Change inWire() {
        return GroupRows.inside(ofLink(), "jumper", ScenarioKeys.JUMPER);
    }
}
