package org.sagwise.web.engine;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.PackReading;
import org.sagwise.reading.PartReading;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/**
 * All that an engine says about a bench, line by line: the same code is asked on a JVM and in a browser,
 * and a test compares the two. A line holds a text, or numbers behind {@code =}, in every digit.
 */
public final class Answers {

    private static final double WIDTH = 800;

    private final List<String> lines = new ArrayList<>();

    private Answers() {}

    /**
     * With the button let go and held: readings; then cautions.
     *
     * @param whole also the cautions that only time shows, and the pictures in two languages, which take most of the
     *     time: a bench that nobody has laid out is laid out first
     */
    public static String of(Scenario scenario, Catalogue catalogue, boolean whole) {
        Answers answers = new Answers();
        Assessment plain = Assessment.of(scenario, catalogue);
        Assessment bench = whole ? plain.lookingAhead() : plain;
        answers.readings(bench.with(Press.RELEASED).readings());
        answers.readings(bench.with(Press.HELD).readings());
        bench.cautions().forEach(answers::caution);
        if (whole) {
            answers.pictures(bench.with(Press.HELD), Drawing.BENCH, Theme.LIGHT, Locale.ENGLISH);
            answers.pictures(bench.with(Press.RELEASED), Drawing.SCHEMATIC, Theme.DARK, Locale.GERMAN);
        }
        return String.join("\n", answers.lines);
    }

    private void readings(Readings all) {
        for (CellReading it : all.cells()) {
            numbers(
                    it.id(),
                    it.restV(),
                    it.terminalV(),
                    it.sagV(),
                    it.currentA(),
                    it.limitA(),
                    it.internalOhm(),
                    it.heatW());
        }
        for (CoilReading it : all.coils()) {
            numbers(it.id(), it.ohm(), it.voltsV(), it.currentA(), it.powerW(), it.temperatureC());
        }
        for (PartReading it : all.parts()) {
            numbers(it.id() + " " + it.state(), it.currentA(), it.voltsV(), it.powerW());
        }
        for (LinkReading it : all.links()) {
            numbers("link", it.ohm(), it.currentA(), it.dropV(), it.heatW());
        }
        PackReading pack = all.pack();
        numbers(
                "pack",
                pack.givenW(),
                pack.deliveredW(),
                pack.cellHeatW(),
                pack.pathHeatW(),
                pack.chargingW(),
                pack.boardHeatW(),
                pack.supplyHeatW(),
                pack.loadCurrentA());
        all.nodes().forEach((terminal, volts) -> numbers(terminal.toString(), volts));
    }

    private void caution(Caution caution) {
        numbers(
                "caution " + caution.id() + " " + caution.signal() + " " + caution.parts(),
                caution.measured(),
                caution.limit());
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            lines.add(CautionTexts.title(caution, locale));
            lines.add(CautionTexts.text(caution, locale));
            lines.add(CautionTexts.advice(caution, locale));
        }
    }

    private void pictures(Assessment bench, Drawing drawing, Theme theme, Locale locale) {
        BenchLayout layout = Pictures.layout(bench, drawing, WIDTH);
        BenchView view = BenchView.fit(layout.bounds(), WIDTH, WIDTH / 2);
        lines.add(Pictures.bench(Pictures.scene(bench, layout, theme, locale, Emphasis.NONE, WIDTH), view));
        lines.add(Pictures.stairs(bench, theme, locale, Emphasis.NONE, WIDTH, WIDTH / 3));
    }

    private void numbers(String name, double... values) {
        StringBuilder line = new StringBuilder(name).append(" =");
        for (double value : values) {
            line.append(' ').append(value);
        }
        lines.add(line.toString());
    }
}
