package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.plot.Chart;
import org.sagwise.plan.vary.BuildSpread;
import org.sagwise.plan.vary.Progress;
import org.sagwise.plan.vary.Range;
import org.sagwise.plan.vary.Variable;
import org.sagwise.plan.vary.VariedCurve;
import org.sagwise.plan.vary.VariedField;
import org.sagwise.plan.vary.Vary;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.report.PlotCsv;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.report.picture.PlotPicture;
import org.sagwise.report.vary.VaryCharts;
import org.sagwise.report.vary.VaryWords;
import org.sagwise.scenario.Scenario;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Shows a reading over one value or two, or what it becomes where parts are not as printed. */
@Command(name = "vary", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class VaryCommand implements Callable<Integer> {

    private static final PictureSize SIZE = new PictureSize(1200, 800);
    private static final int MOST_POINTS = 1_000;
    private static final int MOST_SAMPLES = 1_000_000;
    private static final int FIELD_POINTS = 25;
    private static final int BAND_BUILDS = 200;
    private static final int BAND_POINTS = 21;

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Mixin
    private GivenFile source;

    @Option(names = "--reading", paramLabel = "NAME", required = true, descriptionKey = "vary.reading")
    private String reading;

    @Option(names = "--value", paramLabel = "NAME", descriptionKey = "vary.value")
    private String value;

    @Option(names = "--from", paramLabel = "N", descriptionKey = "vary.from")
    private String from;

    @Option(names = "--to", paramLabel = "N", descriptionKey = "vary.to")
    private String to;

    @Option(names = "--and", paramLabel = "NAME", descriptionKey = "vary.and")
    private String and;

    @Option(names = "--and-from", paramLabel = "N", descriptionKey = "vary.and-from")
    private String andFrom;

    @Option(names = "--and-to", paramLabel = "N", descriptionKey = "vary.and-to")
    private String andTo;

    @Option(names = "--points", paramLabel = "N", defaultValue = "25", descriptionKey = "vary.points")
    private int points;

    @Option(names = "--spread", descriptionKey = "vary.spread")
    private boolean spread;

    @Option(names = "--samples", paramLabel = "N", defaultValue = "10000", descriptionKey = "vary.samples")
    private int samples;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    @Option(names = "--csv", descriptionKey = "vary.csv")
    private boolean csv;

    @Option(names = "-o", paramLabel = "OUT", descriptionKey = "vary.out")
    private String out;

    @Mixin
    private Overwriting overwriting;

    VaryCommand(CallContext call) {
        this.call = call;
    }

    /** What is asked of which bench. */
    private record Question(Scenario scenario, Catalogue catalogue, NamedReading reading, VaryWords words) {

        Bench bench() {
            return Bench.of(scenario, catalogue);
        }

        VaryCharts charts() {
            return new VaryCharts(words);
        }
    }

    @Override
    public Integer call() {
        Amounts amounts = new Amounts(call, spec);
        check(amounts);
        Optional<PictureFile> file = Optional.ofNullable(out)
                .map(name -> PictureFile.orPrinted(call, name, overwriting, List.of(source.name()), spec));
        GivenScenario given = source.read(call);
        given.complain(call);
        if (given.scenario().isEmpty()) {
            return ExitStatus.WRONG;
        }
        Question question = question(given.scenario().get(), amounts);
        if (value == null) {
            return spread(question);
        }
        Variable variable = variable(question, "--value", value, amounts);
        Range range = range(question, variable, "--from", from, "--to", to, amounts);
        if (and != null) {
            Variable second = variable(question, "--and", and, amounts);
            Range up = range(question, second, "--and-from", andFrom, "--and-to", andTo, amounts);
            return field(question, variable, range, second, up, file);
        }
        return curve(question, variable, range, file);
    }

    private void check(Amounts amounts) {
        if (value == null && !spread) {
            throw amounts.wrong(call.texts().say("wrong.one-of", "--value, --spread"));
        }
        if (json && csv) {
            throw amounts.wrong(call.texts().say("wrong.one-of", "--json, --csv"));
        }
        if (value == null && (out != null || csv)) {
            throw amounts.wrong(call.texts().say("vary.needs-value", out != null ? "-o" : "--csv"));
        }
        if (and != null && spread) {
            throw amounts.wrong(call.texts().say("wrong.one-of", "--and, --spread"));
        }
        if (points < 2 || points > MOST_POINTS) {
            throw amounts.wrong(call.texts().say("vary.range", "--points", 2, MOST_POINTS));
        }
        if (samples < 100 || samples > MOST_SAMPLES) {
            throw amounts.wrong(call.texts().say("vary.range", "--samples", 100, MOST_SAMPLES));
        }
    }

    private Question question(Scenario scenario, Amounts amounts) {
        Catalogue catalogue = CatalogueLoader.builtIn();
        Bench bench = Bench.of(scenario, catalogue);
        Optional<NamedReading> asked =
                NamedReading.of(reading).filter(it -> it.read(bench).isPresent());
        if (asked.isEmpty()) {
            List<String> known =
                    NamedReading.all(bench).stream().map(NamedReading::toString).toList();
            throw amounts.wrong(WrongValue.words(call.texts(), "--reading", reading, known));
        }
        return new Question(scenario, catalogue, asked.get(), new VaryWords(scenario, call.format()));
    }

    private Variable variable(Question question, String option, String name, Amounts amounts) {
        Bench bench = question.bench();
        return Variable.of(question.scenario(), name).orElseThrow(() -> {
            List<String> known = Variable.all(question.scenario()).stream()
                    .filter(it -> it.present(bench).isPresent())
                    .map(Variable::toString)
                    .toList();
            return amounts.wrong(WrongValue.words(call.texts(), option, name, known));
        });
    }

    private Range range(
            Question question,
            Variable variable,
            String lowOption,
            String low,
            String highOption,
            String high,
            Amounts amounts) {
        Range usual = variable.usualRange(question.bench());
        double one = low == null ? usual.from() : written(variable, lowOption, low, amounts);
        double other = high == null ? usual.to() : written(variable, highOption, high, amounts);
        if (!(other > one)) {
            throw amounts.wrong(call.texts().say("vary.turned", lowOption, highOption));
        }
        return new Range(one, other);
    }

    private double written(Variable variable, String option, String text, Amounts amounts) {
        double written = variable.written(amounts.any(option, text, variable.measure()));
        if (!variable.allowed().allows(written)
                && !(written >= variable.allowed().least()
                        && written <= variable.allowed().most())) {
            throw amounts.wrong(call.texts()
                    .say(
                            "vary.not-allowed",
                            option,
                            variable.print(variable.allowed().least(), call.format()),
                            variable.print(variable.allowed().most(), call.format())));
        }
        return written;
    }

    private int curve(Question question, Variable variable, Range range, Optional<PictureFile> file) {
        VariedCurve curve = new Vary(question.scenario(), question.catalogue(), question.reading())
                .over(variable, range, points, Progress.NONE);
        double[] places = range.places(Math.min(points, BAND_POINTS));
        List<BuildSpread.Percentiles> along = spread
                ? BuildSpread.along(
                        question.scenario(),
                        question.catalogue(),
                        question.reading(),
                        variable,
                        places,
                        BAND_BUILDS,
                        Progress.NONE)
                : List.of();
        Chart chart = spread
                ? question.charts().banded(curve, places, along)
                : question.charts().of(curve);
        if (file.isPresent()) {
            int written =
                    picture(new PlotPicture(question.words().title(curve), chart, VaryCharts.now(curve)), file.get());
            if (written != ExitStatus.DONE || file.get().isPrinted()) {
                return written;
            }
        }
        if (csv) {
            call.out().print(PlotCsv.of(chart));
        } else if (json) {
            VaryJson.write(call, curve, places, along);
        } else {
            new VaryText(call, question.words()).curve(curve, question.reading().read(question.bench()), places, along);
        }
        return ExitStatus.DONE;
    }

    private int field(Question question, Variable x, Range across, Variable y, Range up, Optional<PictureFile> file) {
        int count = Math.min(points, FIELD_POINTS);
        VariedField field = new Vary(question.scenario(), question.catalogue(), question.reading())
                .over(x, across, y, up, count, Progress.NONE);
        Chart chart = question.charts().of(field);
        if (file.isPresent()) {
            String title = question.words()
                    .word(
                            "field",
                            question.words().name(field.reading()),
                            question.words().name(x),
                            question.words().name(y));
            int written = picture(new PlotPicture(title, chart, Optional.empty()), file.get());
            if (written != ExitStatus.DONE || file.get().isPrinted()) {
                return written;
            }
        }
        if (csv) {
            call.out().print(PlotCsv.of(chart));
        } else if (json) {
            VaryJson.write(call, field);
        } else {
            new VaryText(call, question.words()).field(field);
        }
        return ExitStatus.DONE;
    }

    private int spread(Question question) {
        Optional<BuildSpread> found =
                BuildSpread.of(question.scenario(), question.catalogue(), question.reading(), samples, Progress.NONE);
        if (found.isEmpty()) {
            call.problem(question.words().word("spread.nothing"));
            return ExitStatus.WRONG;
        }
        if (json) {
            VaryJson.write(call, found.get());
        } else {
            new VaryText(call, question.words()).spread(found.get());
        }
        return ExitStatus.DONE;
    }

    private int picture(PlotPicture picture, PictureFile file) {
        return file.write((format, bytes) -> picture.write(format, call.locale(), Theme.LIGHT, SIZE, bytes));
    }
}
