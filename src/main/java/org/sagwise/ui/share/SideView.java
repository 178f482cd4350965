package org.sagwise.ui.share;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.bench.SettingOut;
import org.sagwise.ui.kit.CanvasLayer;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/** One of two benches that are compared: its picture, and its staircase under it. */
final class SideView extends VBox {

    private static final double LEAST_HEIGHT = 110;

    /** A legend would lie over a picture as small as this. */
    private static final Set<Detail> DETAILS =
            Detail.usual().stream().filter(detail -> detail != Detail.LEGEND).collect(Collectors.toUnmodifiableSet());

    private final LooksModel looks;
    private final Wording wording;
    private final Label title = new Label();
    private final CanvasLayer bench = new CanvasLayer(this::paintBench);
    private final CanvasLayer stairs = new CanvasLayer(this::paintStairs);
    private Optional<Laid> laid = Optional.empty();
    private Optional<Assessment> shown = Optional.empty();
    private double spanV;

    /**
     * @param id for looking it up
     */
    SideView(String id, LooksModel looks, Wording wording) {
        this.looks = looks;
        this.wording = wording;
        setId(id);
        getStyleClass().add("compare-side");
        title.setId(id + "-title");
        title.getStyleClass().add("section-title");
        getChildren().addAll(title, room(bench), room(stairs));
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
    }

    private static StackPane room(CanvasLayer layer) {
        StackPane room = new StackPane(layer);
        room.setMinSize(0, LEAST_HEIGHT);
        room.setPrefSize(0, LEAST_HEIGHT);
        room.getStyleClass().add("compare-picture");
        VBox.setVgrow(room, Priority.ALWAYS);
        return room;
    }

    /**
     * Shows a bench.
     *
     * @param titleKey what stands above it
     * @param volts for how many volts its staircase has room
     */
    void show(Optional<Assessment> assessment, String titleKey, double volts) {
        shown = assessment;
        spanV = volts;
        title.setText(
                assessment.map(it -> titled(titleKey, it.scenario().title())).orElse(""));
        setAccessibleText(title.getText());
        repaint();
    }

    private String titled(String titleKey, String name) {
        return wording.say(titleKey, name.isBlank() ? wording.say("header.untitled") : name);
    }

    void repaint() {
        bench.repaint();
        stairs.repaint();
    }

    private void paintBench(Pen graphics, double width, double height) {
        shown.ifPresent(assessment -> {
            BenchScene scene = BenchScene.of(
                            assessment,
                            layout(assessment, width, height),
                            looks.get().theme(),
                            wording.locale())
                    .with(DETAILS);
            BenchView view = BenchView.fit(scene.layout().bounds(), width, height);
            StillPainter.paint(graphics, scene, view);
            ChevronPainter.paintStill(graphics, scene, view);
        });
    }

    /** Laid out anew only for another bench or another size: that takes longer than painting. */
    private BenchLayout layout(Assessment assessment, double width, double height) {
        Key key = new Key(assessment.scenario(), looks.get().textScale(), width, height);
        if (!laid.map(Laid::key).equals(Optional.of(key))) {
            laid = Optional.of(new Laid(key, SettingOut.small(key.scenario(), key.textScale(), width, height)));
        }
        return laid.get().layout();
    }

    private record Key(Scenario scenario, double textScale, double width, double height) {}

    private record Laid(Key key, BenchLayout layout) {}

    private void paintStairs(Pen graphics, double width, double height) {
        shown.ifPresent(assessment -> {
            StairScene scene = new StairScene(
                            assessment.staircase(),
                            assessment.scenario(),
                            looks.get().theme(),
                            wording.locale(),
                            looks.get().textScale(),
                            Emphasis.NONE)
                    .spanning(spanV);
            StaircasePainter.of(scene, width, height).paint(graphics);
        });
    }

    /** Volts that the staircase of a bench needs. */
    static double spanV(Assessment assessment) {
        return assessment.staircase().highestV() - assessment.staircase().lowestV();
    }
}
