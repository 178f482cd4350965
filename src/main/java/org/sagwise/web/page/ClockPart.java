package org.sagwise.web.page;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.picture.geometry.Point;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.plot.Chart;
import org.sagwise.picture.plot.Curve;
import org.sagwise.picture.plot.PlotPainter;
import org.sagwise.report.course.ClockTexts;
import org.sagwise.report.course.CourseCharts;
import org.sagwise.report.course.HaltWords;
import org.sagwise.report.course.Quantity;
import org.sagwise.report.pen.SvgPen;
import org.sagwise.run.RunState;
import org.sagwise.run.Trace;
import org.sagwise.run.Work;
import org.sagwise.run.playback.Now;
import org.sagwise.run.playback.Speed;
import org.sagwise.scenario.Press;

/** Time on the bench: let it run, press and rest, run down, turn back, and the curves of it all. */
final class ClockPart implements PagePart {

    private static final int HEIGHT = 130;

    /** Curves are drawn anew no more often than this while time runs, ms. */
    private static final double LEAST_MS = 250;

    private final Tag time = Tag.byId("time");
    private final Tag go = Tag.byId("go");
    private final Tag speeds = Tag.byId("speeds");
    private final Tag slider = Tag.byId("moment");
    private final Tag halt = Tag.byId("halt");
    private final Tag runDown = Tag.byId("run-down");
    private final Tag ran = Tag.byId("running");
    private final Tag curves = Tag.byId("curves");
    private final Hand hand;
    private View view;
    private double drawnMs;
    private double drawnS = -1;
    private String told = "";
    private Optional<Work> running = Optional.empty();
    private double heardMs;

    ClockPart(Hand hand) {
        this.hand = hand;
        go.addEventListener(
                "click",
                event -> hand.time(() -> {
                    if (view.bench().time().isGoing()) {
                        view.bench().time().pause();
                    } else {
                        view.bench().time().go();
                    }
                }));
        on("press-3", () -> {
            view.bench().time().goOn(Press.HELD, 3);
            view.bench().time().goOn(Press.RELEASED, 27);
        });
        runDown.addEventListener("click", event -> running.ifPresentOrElse(Work::callOff, this::runDown));
        on("start-over", () -> view.bench().time().startOver());
        slider.addEventListener(
                "input",
                event -> hand.time(() -> view.bench()
                        .time()
                        .turnTo(Double.parseDouble(slider.getValue())
                                / 1000
                                * view.bench().time().now().endS())));
        for (Speed speed : Speed.values()) {
            Tag.byId("speed-" + speed.factor())
                    .addEventListener(
                            "change",
                            event -> hand.time(() -> view.bench().time().setSpeed(speed)));
        }
    }

    private void runDown() {
        running = Optional.of(hand.runDown(this::hear, () -> {
            running = Optional.empty();
            ran.setTextContent("");
        }));
        runDown.setTextContent(view.words().clock().word("run-down.stop"));
    }

    private void hear(RunState state) {
        double ms = Dom.now();
        if (ms - heardMs > LEAST_MS) {
            heardMs = ms;
            ClockTexts words = view.words().clock();
            ran.setTextContent(words.word("run-down.progress", words.time(state.timeS()), state.presses()));
        }
    }

    private void on(String id, Runnable deed) {
        Tag.byId(id).addEventListener("click", event -> hand.time(deed));
    }

    @Override
    public void lay(View shown) {
        drawnS = -1;
        told = "";
        speeds.setAttribute("aria-label", shown.words().say("speed"));
        show(shown);
    }

    @Override
    public void show(View shown) {
        view = shown;
        ClockTexts words = shown.words().clock();
        Now now = shown.bench().time().now();
        time.setTextContent(
                shown.words().say("clock.now", words.time(now.timeS()), words.word("presses", now.presses())));
        go.setTextContent(words.word(shown.bench().time().isGoing() ? "go.pause" : "go"));
        runDown.setTextContent(
                running.isPresent()
                        ? words.word("run-down.stop")
                        : shown.words().say("run-down"));
        slider.setDisabled(now.endS() == 0);
        if (!Dom.focused().equals("moment")) {
            slider.setValue(String.valueOf(now.endS() > 0 ? Math.round(1000 * now.timeS() / now.endS()) : 0));
        }
        slider.setAttribute("aria-valuetext", words.time(now.timeS()));
        halt(words);
        double ms = Dom.now();
        if (now.timeS() != drawnS && (!shown.bench().time().isGoing() || ms - drawnMs > LEAST_MS)) {
            drawnMs = ms;
            drawnS = now.timeS();
            draw(words);
        }
    }

    private void halt(ClockTexts words) {
        Optional<HaltWords> said = view.bench().time().halt().map(it -> HaltWords.of(it, words));
        String spoken = said.map(HaltWords::spoken).orElse("");
        if (spoken.equals(told)) {
            return;
        }
        told = spoken;
        Dom.clear(halt);
        said.ifPresent(it -> {
            halt.appendChild(Dom.tag("h3", "", it.title()));
            it.sentences().forEach(sentence -> halt.appendChild(Dom.tag("p", "", sentence)));
            it.advice().ifPresent(advice -> halt.appendChild(Dom.tag("p", "advice", advice)));
            if (it.isGrave()) {
                halt.appendChild(
                        Dom.tag("p", "advice", words.about(view.now().bench()).standBack()));
            }
            halt.appendChild(Dom.tag("p", "small", words.word("halt.estimate")));
        });
    }

    private void draw(ClockTexts words) {
        Dom.clear(curves);
        Optional<Trace> course = view.bench().time().course();
        if (course.isEmpty() || course.get().endS() == 0) {
            curves.appendChild(Dom.tag("p", "small", words.word("curves.none")));
            return;
        }
        CourseCharts charts = new CourseCharts(view.now().bench(), course.get(), words);
        double width = Math.max(260, curves.getClientWidth());
        for (Quantity quantity : Quantity.values()) {
            Chart chart = charts.of(quantity, Set.of());
            SvgPen pen = new SvgPen(2);
            new PlotPainter(chart, 1, width, HEIGHT)
                    .paint(
                            new ThemedPen(pen, view.theme(), 1),
                            Optional.of(new Point(view.bench().time().now().timeS(), Double.NaN)),
                            Optional.empty());
            String title = words.word("curves." + quantity.name().toLowerCase(java.util.Locale.ROOT));
            Tag figure = Dom.tag(
                    "figure",
                    "",
                    Dom.tag("figcaption", "", title + "  " + values(chart)),
                    Dom.svg(pen.svg((int) width, HEIGHT, " aria-hidden=\"true\"", "")));
            curves.appendChild(figure);
        }
    }

    private String values(Chart chart) {
        return chart.told(view.bench().time().now().timeS()).stream()
                .filter(told -> told.curve().weight() == Curve.Weight.MAIN)
                .map(told -> told.curve().name() + " " + told.text())
                .collect(Collectors.joining("   "));
    }
}
