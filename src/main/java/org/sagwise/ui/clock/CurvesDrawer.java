package org.sagwise.ui.clock;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.plot.Chart;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.CourseCharts;
import org.sagwise.report.course.Quantity;
import org.sagwise.run.Trace;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.settings.LooksModel;

/** A drawer at the foot of the window with the curves of everything that was recorded. */
public final class CurvesDrawer extends VBox {

    /** While time passes, curves are made anew only now and then: at least this long apart, ns. */
    private static final long LEAST_GAP_NS = 250_000_000;

    /** Making them takes at most this share of the time. */
    private static final long LEAST_REST = 8;

    private final ClockModel clock;
    private final ClockTexts texts;
    private final PartLegend legend;
    private final List<QuantityPlot> plots;
    private final Label moment = new Label();
    private final Label nothing = new Label();
    private final ObjectProperty<Optional<Point>> pointed = new SimpleObjectProperty<>(Optional.empty());
    private Optional<CourseCharts> charts = Optional.empty();
    private long nextNs = Long.MIN_VALUE;

    public CurvesDrawer(
            ClockModel clock,
            Commands commands,
            LooksModel looks,
            Controls controls,
            ClockTexts texts,
            Subscriptions subscriptions) {
        this.clock = clock;
        this.texts = texts;
        legend = new PartLegend(texts, this::draw);
        plots = Stream.of(Quantity.values())
                .map(each -> plot(each, looks, subscriptions))
                .toList();
        setId("curves");
        // However large the text, the columns beside it keep their width.
        setMinWidth(0);
        getStyleClass().add("curves-drawer");
        PlotRows row = new PlotRows(
                plots,
                Stream.of(Quantity.values()).mapToDouble(Quantity::widthPercent).toArray(),
                looks,
                subscriptions);
        nothing.setId("curves-none");
        nothing.getStyleClass().add("curves-none");
        nothing.setWrapText(true);
        StackPane body = new StackPane(row, nothing);
        body.setMinWidth(0);
        setVgrow(body, Priority.ALWAYS);
        VBox content = new VBox(head(commands, controls), body);
        content.getStyleClass().add("curves-content");
        content.setMinWidth(0);
        // Where text is large there may be no height for all of it.
        ColumnScroll scroll = new ColumnScroll(subscriptions, "curves-scroll");
        scroll.setContent(content);
        scroll.setFitToHeight(true);
        scroll.setMinHeight(0);
        setVgrow(scroll, Priority.ALWAYS);
        getChildren().add(scroll);
        subscriptions.watch(clock.nowProperty(), now -> follow());
        subscriptions.onChange(clock.goingProperty(), this::renew);
        subscriptions.onChange(visibleProperty(), this::renew);
        subscriptions.onChange(clock.askedProperty(), this::renew);
        subscriptions.watch(pointed, at -> tellMoment());
    }

    private QuantityPlot plot(Quantity each, LooksModel looks, Subscriptions subscriptions) {
        return new QuantityPlot(each, clock, looks, pointed, texts, subscriptions);
    }

    private FlowPane head(Commands commands, Controls controls) {
        Label title = new Label(texts.word("curves"));
        title.getStyleClass().add("section-title");
        title.setMinWidth(USE_PREF_SIZE);
        moment.setId("curves-moment");
        moment.getStyleClass().add("curves-moment");
        moment.setMinWidth(USE_PREF_SIZE);
        Button save = controls.button(commands.get("time-save"));
        save.setText(texts.word("curves.save"));
        save.setMinWidth(USE_PREF_SIZE);
        HBox name = new HBox(title, moment);
        name.getStyleClass().add("curves-name");
        name.setAlignment(Pos.CENTER_LEFT);
        RunDownForm form = new RunDownForm(clock, texts);
        FlowPane head = new FlowPane(name, legend, form.press(), form.rest(), save);
        head.getStyleClass().add("curves-head");
        head.setMinHeight(USE_PREF_SIZE);
        return head;
    }

    private void follow() {
        if (!clock.goingProperty().get() || System.nanoTime() >= nextNs) {
            renew();
        }
    }

    /** Makes the curves anew if more was recorded, and shows where the clock stands. */
    private void renew() {
        if (!isVisible()) {
            return;
        }
        long begunNs = System.nanoTime();
        legend.show(clock.bench());
        boolean asked = clock.askedProperty().get();
        nothing.setText(texts.word(asked ? "curves.asked" : "curves.none"));
        Optional<Trace> course = clock.course().filter(recorded -> !asked && recorded.endS() > 0);
        charts = course.map(recorded -> new CourseCharts(clock.bench(), recorded, texts));
        nothing.setVisible(course.isEmpty());
        draw();
        long tookNs = System.nanoTime() - begunNs;
        nextNs = System.nanoTime() + Math.max(LEAST_GAP_NS, LEAST_REST * tookNs);
    }

    private void draw() {
        double nowS = clock.nowProperty().get().timeS();
        for (int i = 0; i < plots.size(); i++) {
            Quantity quantity = Quantity.values()[i];
            Chart chart = charts.map(made -> made.of(quantity, legend.hidden())).orElse(Chart.EMPTY);
            plots.get(i).show(chart, nowS);
            plots.get(i).setVisible(charts.isPresent());
        }
        tellMoment();
    }

    private void tellMoment() {
        double at = pointed.get().map(Point::x).orElse(clock.nowProperty().get().timeS());
        moment.setText(texts.word("curves.at", texts.time(at)));
    }
}
