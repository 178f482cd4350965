package org.sagwise.ui.shell;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Caution;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.ui.analysis.DangerStrip;
import org.sagwise.ui.bench.FireView;
import org.sagwise.ui.bench.OpeningStrip;
import org.sagwise.ui.clock.ClockStrip;
import org.sagwise.ui.clock.HaltCard;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.LearnMenu;
import org.sagwise.ui.text.Wording;

/** What lies across the top: header, clock, dangers, and why time has stopped. */
final class Heading extends VBox {

    private final Models models;
    private final MenuBar menus;

    Heading(
            Models models,
            Commands commands,
            Consumer<Caution> show,
            Consumer<Path> openLessons,
            Controls controls,
            ClockTexts clockTexts,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
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
        Header header = new Header(
                fire,
                menus,
                models.bench().model(),
                models.files().documents(),
                models.shown().looks(),
                wording,
                subscriptions);
        ClockStrip strip = new ClockStrip(
                models.time().clock(),
                commands,
                models.shown().preferences(),
                models.shown().looks(),
                controls,
                clockTexts,
                subscriptions);
        subscriptions.watch(models.shown().looks().projectorProperty(), now -> placeClock(strip));
        subscriptions.watch(models.time().clock().goingProperty(), now -> placeClock(strip));
        subscriptions.watch(models.time().clock().nowProperty(), now -> placeClock(strip));
        getChildren()
                .addAll(
                        header,
                        strip,
                        new DangerStrip(
                                models.bench().model(), show, models.bench().cures(), wording, subscriptions),
                        new HaltCard(models.time().clock(), clockTexts, subscriptions),
                        new OpeningStrip(models.files().opening(), wording, subscriptions));
    }

    List<Menu> menus() {
        return menus.getMenus();
    }

    /** A class that looks on sees the clock once time has begun. */
    private void placeClock(ClockStrip strip) {
        boolean begun = models.time().clock().goingProperty().get()
                || models.time().clock().nowProperty().get().endS() > 0;
        boolean shown = begun || !models.shown().looks().projectorProperty().get();
        strip.setVisible(shown);
        strip.setManaged(shown);
    }
}
