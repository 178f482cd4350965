package org.sagwise.ui.clock;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.Remark;
import org.sagwise.ui.kit.Beat;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Crowding;
import org.sagwise.ui.kit.Figure;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.settings.PreferencesModel;
import org.sagwise.ui.settings.Shown;

/** The clock under the header: set time going, how fast, where it stands, and back again. */
public final class ClockStrip extends HBox {

    /** Least width of the course for a slider to be of use, in pixels at the usual size of text. */
    private static final double LEAST_COURSE = 150;

    /** Often enough for the eye, s. */
    private static final double TICK_S = 0.05;

    private final ClockModel clock;
    private final ClockTexts texts;
    private final LooksModel looks;
    private final Figure time = new Figure();
    private final Label presses = new Label();
    private final Label aside = new Label();
    private final StackPane course = new StackPane();
    private final Button runDown;
    private final List<Node> steps;

    public ClockStrip(
            ClockModel clock,
            Commands commands,
            PreferencesModel preferences,
            LooksModel looks,
            Controls controls,
            ClockTexts texts,
            Subscriptions subscriptions) {
        this.clock = clock;
        this.texts = texts;
        this.looks = looks;
        setId("clock");
        getStyleClass().add("clock-strip");
        setAlignment(Pos.CENTER_LEFT);
        Button start = small(commands.get("time-start"), "back-to-start", controls);
        start.setGraphic(icon("icon-to-start"));
        steps = List.of(
                start,
                small(commands.get("time-press-back"), "press-back", controls),
                small(commands.get("time-step-back"), "step-back", controls),
                small(commands.get("time-step-on"), "step-on", controls),
                small(commands.get("time-press-on"), "press-on", controls));
        time.setTextId("clock-time");
        time.getStyleClass().add("clock-time");
        presses.setId("clock-presses");
        presses.getStyleClass().addAll("quiet", "clock-presses");
        presses.setMinWidth(USE_PREF_SIZE);
        aside.setId("clock-aside");
        aside.setMinWidth(0);
        Tip.put(aside, aside.textProperty());
        TimeSlider slider = new TimeSlider(clock, texts, subscriptions);
        RunDownProgress progress = new RunDownProgress(clock, texts, subscriptions);
        course.getChildren().addAll(slider, progress);
        HBox.setHgrow(course, Priority.ALWAYS);
        runDown = wired(new Button(), commands.get("time-run-down"), "run-down", controls);
        getChildren().add(go(commands, controls, subscriptions));
        getChildren().addAll(steps);
        getChildren().addAll(time, presses, course, aside);
        getChildren()
                .addAll(
                        new SpeedChoice(clock, texts, subscriptions),
                        runDown,
                        curves(commands, preferences, controls, subscriptions));
        subscriptions.watch(clock.nowProperty(), this::show);
        subscriptions.watch(clock.remarkProperty(), this::tell);
        subscriptions.watch(clock.runDown().progressProperty(), now -> swap(slider, progress, now.isPresent()));
        subscriptions.watch(widthProperty(), now -> arrange());
        subscriptions.onChange(looks.property(), this::arrange);
        Beat beat = Beat.each(TICK_S, clock::tick);
        subscriptions.watch(clock.goingProperty(), beat::run);
        subscriptions.add(() -> beat.run(false));
    }

    private ButtonBase go(Commands commands, Controls controls, Subscriptions subscriptions) {
        ToggleButton go = wired(new ToggleButton(), commands.get("time-go"), "go", controls);
        go.getStyleClass().add("go-button");
        Region icon = icon("icon-go");
        go.setGraphic(icon);
        subscriptions.watch(clock.goingProperty(), going -> {
            go.setSelected(going);
            go.setText(texts.word(going ? "go.pause" : "go"));
            icon.getStyleClass().setAll("icon", going ? "icon-pause" : "icon-go");
        });
        return go;
    }

    private ButtonBase curves(
            Commands commands, PreferencesModel preferences, Controls controls, Subscriptions subscriptions) {
        ToggleButton curves = wired(new ToggleButton(), commands.get("time-curves"), "curves", controls);
        subscriptions.watch(preferences.property(), now -> curves.setSelected(now.curves() == Shown.SHOWN));
        return curves;
    }

    private Button small(Command command, String word, Controls controls) {
        Button button = wired(new Button(), command, word, controls);
        button.getStyleClass().add("step-button");
        return button;
    }

    private <T extends ButtonBase> T wired(T button, Command command, String word, Controls controls) {
        button.setText(texts.word(word));
        button.setId("clock-" + word);
        button.setMinWidth(USE_PREF_SIZE);
        controls.wire(button, command);
        Tip.of(button).ifPresent(button::setAccessibleText);
        return button;
    }

    private static Region icon(String style) {
        Region icon = new Region();
        icon.getStyleClass().setAll("icon", style);
        return icon;
    }

    private void show(Now now) {
        time.setText(texts.time(now.timeS()));
        String counted = texts.word("presses", now.presses());
        boolean heldThen = now.isTurnedBack() && now.press().isHeld();
        presses.setText(heldThen ? texts.word("presses.held-then", counted) : counted);
        setAccessibleText(texts.word("spoken", time.getText(), presses.getText()));
    }

    private void tell(Remark told) {
        String words = "";
        if (told instanceof Remark.StartedOver) {
            words = texts.word("started-over");
        } else if (told instanceof Remark.Event event) {
            words = texts.about(event.bench()).sentence(event.event());
        }
        aside.setText(words);
        aside.setManaged(!words.isEmpty());
        aside.setVisible(!words.isEmpty());
    }

    private static void swap(Node slider, Node progress, boolean running) {
        slider.setVisible(!running);
        progress.setVisible(running);
    }

    private void arrange() {
        course.setMinWidth(LEAST_COURSE * looks.get().textScale());
        Crowding.relieve(this, List.of(steps, List.of(course), List.of(presses), List.of(runDown)));
    }
}
