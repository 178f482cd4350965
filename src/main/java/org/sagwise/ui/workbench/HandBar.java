package org.sagwise.ui.workbench;

import java.util.Locale;
import java.util.stream.Stream;
import javafx.geometry.Orientation;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Separator;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Region;
import org.sagwise.scenario.edit.JointChoice;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.text.Wording;

/** What hands can do at the bench, for people who do not know the keys, one click each. */
public final class HandBar extends FlowPane {

    private final Workbench work;
    private final Wording wording;
    private final ToggleGroup joints = new ToggleGroup();

    public HandBar(Workbench work, Commands commands, Controls controls, Wording wording, Subscriptions subscriptions) {
        this.work = work;
        this.wording = wording;
        setId("hand-bar");
        getStyleClass().add("hand-bar");
        getChildren().add(quiet(wording.say("hand.join")));
        Stream.of(JointChoice.values()).map(this::joint).forEach(getChildren()::add);
        getChildren().add(new Separator(Orientation.VERTICAL));
        commands.row("hand-bar").stream().map(controls::button).forEach(getChildren()::add);
        getChildren().add(new Separator(Orientation.VERTICAL));
        getChildren()
                .addAll(
                        probe(controls.button(commands.get("probe-red")), "red"),
                        probe(controls.button(commands.get("probe-black")), "black"));
        subscriptions.onChange(work.movesProperty(), this::follow);
        follow();
    }

    /** A probe that is not in use rests here; it can be dragged onto the bench. */
    private Button probe(Button button, String colour) {
        Region tip = new Region();
        tip.getStyleClass().addAll("probe-tip", "probe-tip-" + colour);
        button.setGraphic(tip);
        button.setAccessibleText(button.getText());
        button.setText(wording.say("hand.probe." + colour));
        DragOut.of(button, work);
        return button;
    }

    private static Label quiet(String words) {
        Label label = new Label(words);
        label.getStyleClass().add("quiet");
        return label;
    }

    private ToggleButton joint(JointChoice choice) {
        String word = choice.name().toLowerCase(Locale.ROOT);
        ToggleButton button = new ToggleButton(wording.say("hand.join." + word));
        button.setId("join-" + word);
        button.setUserData(choice);
        button.setToggleGroup(joints);
        button.setTooltip(new Tooltip(wording.say("hand.join." + word + ".tip")));
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
