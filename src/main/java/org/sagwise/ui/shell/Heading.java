package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.ui.analysis.ReadingsButton;
import org.sagwise.ui.bench.FireView;
import org.sagwise.ui.clock.ClockStrip;
import org.sagwise.ui.kit.Command;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.LearnMenu;
import org.sagwise.ui.text.Wording;

/** What lies across the top: header, and the clock once somebody wants time to go. */
final class Heading extends VBox {

    private final MenuBar menus;
    private final Header header;
    private final ClockStrip strip;

    Heading(
            Models models,
            Commands commands,
            Consumer<Path> openLessons,
            Controls controls,
            ClockTexts clockTexts,
            Wording wording,
            Subscriptions subscriptions) {
        FireView fire = new FireView(models.bench().model(), commands.get("latch"), controls, wording, subscriptions);
        Map<String, Menu> lessons = LearnMenu.of(
                models.lessons().shelf(),
                models.lessons().room(),
                models.lessons().author().recent(),
                openLessons,
                commands,
                controls,
                wording,
                subscriptions);
        menus = new Menus(commands, models, wording, subscriptions).bar(lessons);
        ReadingsButton readings =
                new ReadingsButton(models.bench().model(), commands.get("readings"), controls, wording, subscriptions);
        header = new Header(
                fire,
                menus,
                clockButton(commands.get("clock"), controls, wording, subscriptions),
                readings,
                models.bench().model(),
                models.files().documents(),
                models.shown().looks(),
                wording,
                subscriptions);
        strip = new ClockStrip(
                models.time().clock(),
                commands,
                models.shown().preferences(),
                models.shown().looks(),
                controls,
                clockTexts,
                subscriptions);
        commands.get("clock").mark().ifPresent(mark -> subscriptions.watch(mark.shown(), this::placeClock));
        getChildren().addAll(header, strip);
    }

    private static ToggleButton clockButton(
            Command clock, Controls controls, Wording wording, Subscriptions subscriptions) {
        ToggleButton button = new ToggleButton(wording.say("clock.button"));
        button.setId("clock-toggle");
        button.getStyleClass().add("clock-toggle");
        button.setMinWidth(USE_PREF_SIZE);
        controls.wire(button, clock);
        clock.mark().ifPresent(mark -> subscriptions.watch(mark.shown(), button::setSelected));
        return button;
    }

    /** The column with the readings is open, or closed. */
    void tellReadings(boolean open) {
        header.tellReadings(open);
    }

    List<Menu> menus() {
        return menus.getMenus();
    }

    private void placeClock(boolean shown) {
        strip.setVisible(shown);
        strip.setManaged(shown);
    }
}
