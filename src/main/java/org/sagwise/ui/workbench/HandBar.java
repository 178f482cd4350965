package org.sagwise.ui.workbench;

import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** What hands reach for at the foot of the bench: the kind of joint that they pull, and the probes. */
public final class HandBar extends HBox {

    private final Workbench work;
    private final Wording wording;
    private final Label title;
    private final ToggleGroup joints = new ToggleGroup();

    public HandBar(Workbench work, Commands commands, Controls controls, Wording wording, Subscriptions subscriptions) {
        this.work = work;
        this.wording = wording;
        title = quiet(wording.say("hand.join"));
        setId("hand-bar");
        getStyleClass().add("hand-bar");
        setAlignment(Pos.CENTER_LEFT);
        getChildren().add(title);
        Stream.of(JointChoice.values()).map(this::joint).forEach(getChildren()::add);
        getChildren()
                .addAll(
                        probe(controls.button(commands.get("probe-red")), "red"),
                        probe(controls.button(commands.get("probe-black")), "black"));
        subscriptions.onChange(work.movesProperty(), this::follow);
        follow();
    }

    /** What the kinds of joint are for; their tooltips say the same. */
    public Node title() {
        return title;
    }

    /** A probe that is not in use rests here; it can be dragged onto the bench. */
    private Button probe(Button button, String colour) {
        Region tip = new Region();
        tip.getStyleClass().addAll("probe-tip", "probe-tip-" + colour);
        button.setGraphic(tip);
        button.setAccessibleText(button.getText());
        button.setText(wording.say("hand.probe." + colour));
        button.setMinWidth(USE_PREF_SIZE);
        DragOut.of(button, work);
        return button;
    }

    private static Label quiet(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("quiet");
        label.setMinWidth(USE_PREF_SIZE);
        return label;
    }

    private ToggleButton joint(JointChoice choice) {
        String word = choice.name().toLowerCase(Locale.ROOT);
        ToggleButton button = new ToggleButton(wording.say("hand.join." + word));
        button.setId("join-" + word);
        button.setUserData(choice);
        button.setToggleGroup(joints);
        button.setMinWidth(USE_PREF_SIZE);
        Tip.put(button, wording.say("hand.join." + word + ".tip"));
        button.setOnAction(event -> {
            work.hands().setJoint(choice);
            work.ground().takeFocus();
        });
        return button;
    }

    private void follow() {
        joints.getToggles()
                .forEach(each ->
                        each.setSelected(each.getUserData() == work.hands().joint()));
    }
}
