package org.sagwise.ui.desk;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.plot.Chart;
import org.sagwise.plan.vary.BuildSpread;
import org.sagwise.plan.vary.Progress;
import org.sagwise.plan.vary.Range;
import org.sagwise.plan.vary.Variable;
import org.sagwise.plan.vary.VariedCurve;
import org.sagwise.plan.vary.Vary;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.report.vary.VaryCharts;
import org.sagwise.report.vary.VaryWords;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.History;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.plot.PlotSaver;
import org.sagwise.ui.plot.PlotView;
import org.sagwise.ui.settings.LooksModel;
import org.sagwise.ui.text.Wording;

/**
 * A form for what is asked and beside it the answer: a curve or a field on which the bench stands as a point that can
 * be dragged, and what builds do whose parts are not as printed.
 */
final class VaryPane extends BorderPane {

    /** Share of the width that the form may take where text is large. */
    private static final double LARGEST_FORM_SHARE = 0.48;

    private static final int POINTS = 61;
    private static final int FIELD_POINTS = 25;
    private static final int BAND_POINTS = 21;
    private static final int BAND_BUILDS = 150;

    /** Dragging goes in round steps of about this share of the range. */
    private static final double GRAIN = 1 / 200.0;

    private final BenchModel bench;
    private final Wording wording;
    private final LatestTask task;
    private final ObjectProperty<Optional<Point>> pointed = new SimpleObjectProperty<>(Optional.empty());
    private final VaryForm form;
    private final PlotView plot;
    private final SpreadPane spread;
    private final Label readout = new Label();
    private final VBox told = new VBox();
    private final Tab curveTab = new Tab();
    private final Tab spreadTab = new Tab();
    private VaryWords words;
    private String title = "";
    private Optional<History> dragged = Optional.empty();

    /** A chart that was worked out, with what is said under it. */
    private record Answer(String title, Chart chart, Optional<VariedCurve> curve) {}

    VaryPane(
            BenchModel bench,
            LooksModel looks,
            Executor behindTheScenes,
            Exports exports,
            Wording wording,
            Subscriptions subscriptions) {
        this.bench = bench;
        this.wording = wording;
        this.task = LatestTask.in(behindTheScenes);
        setId("vary");
        form = new VaryForm(wording, this::renew);
        plot = new PlotView(looks, pointed, subscriptions);
        plot.setId("vary-plot");
        plot.readByKeys();
        plot.onPick(this::pick);
        spread = new SpreadPane(behindTheScenes, wording);
        readout.setId("vary-readout");
        readout.setMaxWidth(Double.MAX_VALUE);
        readout.setWrapText(true);
        told.getStyleClass().add("vary-told");
        told.setId("vary-told");
        form.add(told);
        ScrollPane left = new ScrollPane(form);
        left.setFitToWidth(true);
        left.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        left.getStyleClass().addAll("plain-scroll", "vary-left");
        left.maxWidthProperty().bind(widthProperty().multiply(LARGEST_FORM_SHARE));
        setLeft(left);
        setCenter(tabs(exports));
        follow();
        subscriptions.onChange(bench.historyProperty(), this::follow);
        subscriptions.onChange(pointed, this::read);
        subscriptions.add(this::callOff);
    }

    private TabPane tabs(Exports exports) {
        PlotSaver saver = new PlotSaver(plot, () -> title, readout::setText, exports, wording);
        HBox foot = new HBox(readout, new WorkLine("vary", task, readout, wording), saver.button());
        HBox.setHgrow(readout, Priority.ALWAYS);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("window-row");
        BorderPane picture = new BorderPane(plot);
        picture.setBottom(foot);
        picture.getStyleClass().add("vary-picture");
        curveTab.setText(wording.say("vary.curve"));
        curveTab.setContent(picture);
        curveTab.setClosable(false);
        spreadTab.setText(wording.say("vary.spread"));
        spreadTab.setContent(spread);
        spreadTab.setClosable(false);
        TabPane tabs = new TabPane(curveTab, spreadTab);
        tabs.setId("vary-tabs");
        spreadTab.selectedProperty().subscribe((before, now) -> renew());
        return tabs;
    }

    void ask(NamedReading reading, Variable variable) {
        form.ask(reading, variable);
        plot.requestFocus();
    }

    private void callOff() {
        task.callOff();
        spread.callOff();
    }

    private Bench bench() {
        return bench.assessment().bench();
    }

    private void follow() {
        if (bench.assessment().isVeiled()) {
            return;
        }
        words = new VaryWords(bench.scenario(), QuantityFormat.forPeople(wording.locale()));
        if (dragged.isPresent()) {
            plot.show(plot.chart(), now());
            read();
            return;
        }
        form.follow(Bench.of(bench.scenario(), bench().catalogue()), words);
        renew();
    }

    /** Where the bench stands, in the values of the axes. */
    private Optional<Point> now() {
        Bench present = Bench.of(bench.scenario(), bench().catalogue());
        return form.variable()
                .filter(it -> it.present(present).isPresent())
                .map(it -> new Point(
                        it.si(it.present(present).getAsDouble()),
                        form.second()
                                .map(other -> other.si(other.present(present).orElse(Double.NaN)))
                                .orElse(Double.NaN)));
    }

    private void renew() {
        Optional<NamedReading> reading = form.reading();
        Optional<Variable> variable = form.variable();
        if (words == null || reading.isEmpty() || variable.isEmpty()) {
            return;
        }
        if (spreadTab.isSelected()) {
            spread.ask(Bench.of(bench.scenario(), bench().catalogue()), reading.get(), words);
            return;
        }
        form.range(variable.get()).ifPresent(range -> draw(reading.get(), variable.get(), range));
    }

    private void draw(NamedReading reading, Variable variable, Range range) {
        Scenario scenario = bench.scenario();
        Bench present = bench();
        Optional<Variable> second = form.second();
        boolean bands = form.wantsBands();
        VaryWords names = words;
        task.ask(() -> answer(scenario, present, reading, variable, range, second, bands, names), this::show);
    }

    private static Answer answer(
            Scenario scenario,
            Bench present,
            NamedReading reading,
            Variable variable,
            Range range,
            Optional<Variable> second,
            boolean bands,
            VaryWords names) {
        Vary vary = new Vary(scenario, present.catalogue(), reading);
        VaryCharts charts = new VaryCharts(names);
        if (second.isPresent()) {
            Variable other = second.get();
            Range up = other.usualRange(Bench.of(scenario, present.catalogue()));
            String title = names.word("field", names.name(reading), names.name(variable), names.name(other));
            return new Answer(
                    title,
                    charts.of(vary.over(variable, range, other, up, FIELD_POINTS, Progress.NONE)),
                    Optional.empty());
        }
        VariedCurve curve = vary.over(variable, range, POINTS, Progress.NONE);
        double[] places = range.places(BAND_POINTS);
        Chart chart = bands
                ? charts.banded(
                        curve,
                        places,
                        BuildSpread.along(
                                scenario, present.catalogue(), reading, variable, places, BAND_BUILDS, Progress.NONE))
                : charts.of(curve);
        return new Answer(names.title(curve), chart, Optional.of(curve));
    }

    private void show(Answer answer) {
        title = answer.title();
        plot.show(answer.chart(), now());
        told.getChildren().clear();
        answer.curve().ifPresent(curve -> {
            double here = curve.reading()
                    .read(Bench.of(bench.scenario(), bench().catalogue()))
                    .orElse(Double.NaN);
            words.sentences(curve, here).forEach(text -> tell(text, "words"));
            tell(words.word(curve.cautions().isEmpty() ? "cautions.none" : "cautions"), "plot-title");
            curve.cautions()
                    .forEach(span -> tell(
                            CautionTexts.signal(span.caution().signal(), wording.locale()) + "  "
                                    + words.span(curve.variable(), span),
                            "words"));
        });
        read();
    }

    private void tell(String text, String style) {
        Label label = WrappedLabel.of(text);
        label.getStyleClass().add(style);
        told.getChildren().add(label);
    }

    /** What the plot says where it is pointed at, else where the bench stands. */
    private void read() {
        Chart chart = plot.chart();
        Optional<Point> at = pointed.get().or(plot::now);
        String text = at.map(point -> {
                    String where = chart.x().value().apply(point.x());
                    if (chart.field().isPresent()) {
                        return wording.say(
                                "vary.at",
                                where + ", " + chart.y().value().apply(point.y()),
                                chart.field()
                                        .get()
                                        .of()
                                        .value()
                                        .apply(chart.field().get().at(point.x(), point.y())));
                    }
                    String values =
                            chart.told(point.x()).stream().map(Chart.Told::text).collect(Collectors.joining(" "));
                    return wording.say("vary.at", where, values);
                })
                .orElse("");
        readout.setText(text);
        plot.setAccessibleText(title + ". " + text);
    }

    /** The bench follows the hand; what the hand did is one edit, whatever lay between. */
    private void pick(Point point, PlotView.Pick how) {
        History base = dragged.orElseGet(bench::history);
        Scenario scenario = base.present();
        Optional<Variable> variable = form.variable();
        Optional<Range> range = variable.flatMap(form::range);
        if (variable.isPresent() && range.isPresent()) {
            Variable first = variable.get();
            Edit edit = first.edit(scenario, rounded(first.written(point.x()), range.get()));
            ScenarioRules rules = new ScenarioRules(bench().catalogue());
            Scenario changed = edit.apply(scenario);
            boolean isAllowed = edit.refusal(scenario, rules).isEmpty();
            if (form.second().isPresent()) {
                Variable other = form.second().get();
                Range up = other.usualRange(Bench.of(scenario, bench().catalogue()));
                Edit also = other.edit(changed, rounded(other.written(point.y()), up));
                isAllowed &= also.refusal(changed, rules).isEmpty();
                changed = also.apply(changed);
            }
            if (isAllowed) {
                dragged = Optional.of(base);
                bench.editFrom(base, edit.name(scenario).in(wording.locale()), changed);
            }
        }
        if (how == PlotView.Pick.DONE) {
            dragged = Optional.empty();
            follow();
        }
    }

    private static double rounded(double written, Range range) {
        double grain = Math.pow(10, Math.floor(Math.log10((range.to() - range.from()) * GRAIN)));
        double round = BigDecimal.valueOf(Math.rint(written / grain))
                .multiply(BigDecimal.valueOf(grain))
                .doubleValue();
        return Math.max(range.from(), Math.min(range.to(), round));
    }
}
