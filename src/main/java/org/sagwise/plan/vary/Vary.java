package org.sagwise.plan.vary;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.plan.vary.VariedCurve.Point;
import org.sagwise.reading.Bench;
import org.sagwise.reading.NamedReading;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;

/** Asks a bench the same question again and again while a value changes. */
public final class Vary {

    /** Halvings until it is known where a caution begins: a thousandth of a step. */
    private static final int HALVINGS = 10;

    private final Scenario scenario;
    private final Catalogue catalogue;
    private final NamedReading reading;
    private final ScenarioRules rules;

    public Vary(Scenario scenario, Catalogue catalogue, NamedReading reading) {
        this.scenario = scenario;
        this.catalogue = catalogue;
        this.reading = reading;
        this.rules = new ScenarioRules(catalogue);
    }

    /** A bench with one number changed, and what the hazard rules find there. */
    private record Tried(Point point, Map<String, Caution> cautions) {}

    /**
     * The reading over a value.
     *
     * @param count number of points, at least 2
     */
    public VariedCurve over(Variable variable, Range range, int count, Progress progress) {
        List<Tried> tried = new ArrayList<>();
        for (double at : range.places(count)) {
            if (!progress.goesOn(tried.size() / (double) count)) {
                break;
            }
            tried.add(tried(variable, at));
        }
        Bench bench = Bench.of(scenario, catalogue);
        return new VariedCurve(
                variable,
                reading,
                tried.stream().map(Tried::point).toList(),
                spans(variable, tried),
                limit(bench, variable),
                variable.present(bench));
    }

    /** The reading over two values, in so many steps each way; without cautions. */
    public VariedField over(Variable x, Range across, Variable y, Range up, int count, Progress progress) {
        double[] xs = across.places(count);
        double[] ys = up.places(count);
        double[][] values = new double[ys.length][xs.length];
        for (int row = 0; row < ys.length; row++) {
            boolean goesOn = progress.goesOn((double) row / ys.length);
            Scenario rowBench = y.with(scenario, ys[row]);
            boolean isAllowed =
                    y.edit(scenario, ys[row]).refusal(scenario, rules).isEmpty();
            for (int column = 0; column < xs.length; column++) {
                values[row][column] = goesOn
                                && isAllowed
                                && x.edit(rowBench, xs[column])
                                        .refusal(rowBench, rules)
                                        .isEmpty()
                        ? read(Bench.of(x.with(rowBench, xs[column]), catalogue))
                        : Double.NaN;
            }
        }
        return new VariedField(x, y, reading, xs, ys, values);
    }

    private double read(Bench bench) {
        return reading.read(bench).orElse(Double.NaN);
    }

    private Tried tried(Variable variable, double at) {
        List<Finding> refused = variable.edit(scenario, at).refusal(scenario, rules);
        if (!refused.isEmpty()) {
            return new Tried(new Point(at, Double.NaN, refused, List.of()), Map.of());
        }
        Bench bench = Bench.of(variable.with(scenario, at), catalogue);
        var readings = reading.press().isHeld() ? bench.fired() : bench.rest();
        Map<String, Caution> cautions = new LinkedHashMap<>();
        Hazards.check(bench).forEach(caution -> cautions.putIfAbsent(key(caution), caution));
        return new Tried(new Point(at, read(bench), List.of(), readings.notices()), cautions);
    }

    /** What makes a caution the same one at another value. */
    private static String key(Caution caution) {
        return caution.id() + caution.parts() + caution.links();
    }

    private List<CautionSpan> spans(Variable variable, List<Tried> tried) {
        List<CautionSpan> spans = new ArrayList<>();
        Map<String, CautionSpan> open = new LinkedHashMap<>();
        for (int i = 0; i < tried.size(); i++) {
            Map<String, Caution> here = tried.get(i).cautions();
            double at = tried.get(i).point().at();
            for (String key : List.copyOf(open.keySet())) {
                if (!here.containsKey(key)) {
                    CautionSpan was = open.remove(key);
                    double end = turn(variable, key, tried.get(i - 1).point().at(), at);
                    spans.add(new CautionSpan(was.caution(), was.from(), end, was.beginsWithin(), true));
                }
            }
            for (Map.Entry<String, Caution> each : here.entrySet()) {
                if (!open.containsKey(each.getKey())) {
                    double begin = i == 0
                            ? at
                            : turn(
                                    variable,
                                    each.getKey(),
                                    at,
                                    tried.get(i - 1).point().at());
                    open.put(each.getKey(), new CautionSpan(each.getValue(), begin, at, i > 0, false));
                }
            }
        }
        double last = tried.isEmpty() ? 0 : tried.get(tried.size() - 1).point().at();
        open.values()
                .forEach(span ->
                        spans.add(new CautionSpan(span.caution(), span.from(), last, span.beginsWithin(), false)));
        spans.sort(Comparator.comparing((CautionSpan span) -> span.caution().signal())
                .thenComparingDouble(CautionSpan::from));
        return spans;
    }

    /** Between a value at which a caution holds and one at which it does not: where it turns. */
    private double turn(Variable variable, String key, double with, double without) {
        double holds = with;
        double free = without;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (holds + free) / 2;
            if (tried(variable, middle).cautions().containsKey(key)) {
                holds = middle;
            } else {
                free = middle;
            }
        }
        return holds;
    }

    /** What the reading is held against on the bench as it is; none where that is what changes. */
    private OptionalDouble limit(Bench bench, Variable variable) {
        if (variable.owner().equals(reading.part()) && variable.key().startsWith("limit_")) {
            return OptionalDouble.empty();
        }
        Optional<PartKind> kind = scenario.part(reading.part()).map(part -> part.kind());
        return switch (reading.quantity()) {
            case "current_A" ->
                kind.filter(it -> it == PartKind.CELL).isPresent()
                        ? NamedReading.read(bench.fired(), reading.part(), "limit_A", -1)
                        : OptionalDouble.empty();
            case "load_fraction" -> OptionalDouble.of(1);
            case "power_W" ->
                kind.filter(it -> it == PartKind.COIL).isPresent()
                        ? bench.values(reading.part()).number("limit_W")
                        : OptionalDouble.empty();
            default -> OptionalDouble.empty();
        };
    }
}
