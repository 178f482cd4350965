package org.sagwise.hazard;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.reading.Bench;
import org.sagwise.run.CellMoment;
import org.sagwise.run.CoilMoment;
import org.sagwise.run.RunEvent;
import org.sagwise.run.RunEvent.Kind;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunState;
import org.sagwise.run.RunTexts;
import org.sagwise.run.Runner;
import org.sagwise.run.Work;

/**
 * What only time shows: a row that is charged or emptied unevenly, a cell reversed at the end, a board that gives up
 * with charge left, a fuse that melts, a guard that opens, a wire or a coil that burns through. The bench is run in the
 * usual way and with the button held on, for as long as a counted effort allows, and the first of each is told with its
 * time. What the cautions of the first moment say already is not said twice.
 */
public final class LookAhead implements Work {

    /** Larger packs take longer to simulate than anyone waits for a caution. */
    private static final int MOST_CELLS = 16;

    /** So are benches of more joints than any that people build. */
    private static final int MOST_LINKS = 100;

    /** Additions and multiplications for each of the courses: some tenths of a second's worth. */
    private static final double MOST_EFFORT = 2e8;

    /** So many of them at a time. */
    private static final double PIECE = 5e6;

    /** A jammed button, or one long press, is followed for so long, s. */
    private static final double HELD_S = 600;

    /**
     * Past the first cut-off a device without a guard is used on, until so many times its time are over: at many amps
     * the first cut-off is a sag with half of the charge left.
     */
    private static final double USED_ON = 3;

    /** At most so long, s. */
    private static final double LONGEST_S = 48 * 3600.0;

    /**
     * Share of its first watts that a coil must still get for somebody to press on: below it there is no glow that would
     * keep anybody. This program's choice.
     */
    static final double STILL_USED = 0.1;

    /** Charge that is left in every cell when a board that stops gives up early, share: this program's choice. */
    static final double LEFT = 0.2;

    /** The detail that says when, s. */
    private static final String AHEAD = "aheadS";

    /** How a course is run, as in {@code how.HELD} of the texts. */
    private enum How {
        USED,
        HELD,
        ALONE
    }

    private final Bench bench;
    private final HazardContext context;
    private final List<Caution> known;
    private final List<Caution> found = new ArrayList<>();
    private final Set<String> told = new HashSet<>();
    private final Deque<Course> courses = new ArrayDeque<>();
    private boolean over;

    private LookAhead(Bench bench, List<Caution> known) {
        this.bench = bench;
        this.known = known;
        context = HazardContext.of(bench);
    }

    /**
     * The cautions of a bench with those that only time shows, the gravest first. Nothing is added where something does
     * harm at once, since nobody would come to see the rest, nor to a bench too large to be followed.
     *
     * @param known the cautions of the first moment
     */
    public static List<Caution> added(Bench bench, List<Caution> known) {
        LookAhead ahead = begin(bench, known);
        ahead.finish();
        return ahead.cautions();
    }

    /** The same piece by piece, see {@link #cautions()}. */
    public static LookAhead begin(Bench bench, List<Caution> known) {
        LookAhead ahead = new LookAhead(bench, known);
        boolean hopeless = known.stream().anyMatch(caution -> caution.signal() == Signal.DANGER);
        boolean large =
                bench.cells().size() > MOST_CELLS || bench.scenario().links().size() > MOST_LINKS;
        if (hopeless || large || bench.cells().isEmpty()) {
            ahead.over = true;
        } else {
            ahead.plan();
        }
        return ahead;
    }

    /** Those that were known and those that were found, the gravest first. */
    public List<Caution> cautions() {
        List<Caution> all = concat(known, found);
        all.sort(Comparator.comparing(Caution::signal));
        return List.copyOf(all);
    }

    /** How long after the start a caution comes true, s; empty for one of the first moment. */
    public static OptionalDouble atS(Caution caution) {
        return caution.details().get(AHEAD) instanceof Double seconds
                ? OptionalDouble.of(seconds)
                : OptionalDouble.empty();
    }

    /** A course that is run, and how its cautions speak of it. */
    private record Course(How how, Runner runner, boolean isFirst) {}

    private void plan() {
        boolean hasButton = !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
        if (hasButton) {
            add(How.HELD, RunPlan.held().until(HELD_S), false);
        }
        add(used(hasButton), RunPlan.USUAL, true);
    }

    private static How used(boolean hasButton) {
        return hasButton ? How.USED : How.ALONE;
    }

    private void add(How how, RunPlan plan, boolean isFirst) {
        courses.add(new Course(how, Runner.begin(bench, plan, MOST_EFFORT, PIECE), isFirst));
    }

    @Override
    public boolean isOver() {
        return over;
    }

    @Override
    public void more() {
        Course course = courses.element();
        if (!course.runner().isOver()) {
            course.runner().more();
            return;
        }
        RunResult run = course.runner().result();
        tell(course.how(), run);
        if (course.isFirst() && isUsedOn(run)) {
            double untilS = Math.min(LONGEST_S, USED_ON * run.last().timeS() + HELD_S);
            add(course.how(), RunPlan.USUAL.until(untilS), false);
        }
        courses.remove();
        over = courses.isEmpty();
    }

    /** What was found by then is what there is. */
    @Override
    public void callOff() {
        over = true;
    }

    /** Whether a first cut-off ended it that nothing but a person would heed, with other cells to push on. */
    private boolean isUsedOn(RunResult used) {
        boolean heeded = used.events().stream()
                .anyMatch(event -> event.kind() == Kind.GUARD_LOW || event.kind() == Kind.BOARD_CUTOFF);
        return !used.events(Kind.CUTOFF).isEmpty() && !heeded && bench.cells().size() > 1;
    }

    private void tell(How how, RunResult run) {
        for (Hazard hazard : AheadHazards.SECTION.hazards()) {
            hazard.all(Foretold.class).forEach(foretold -> tell(how, hazard.id(), foretold, run));
        }
    }

    private void tell(How how, String id, Foretold foretold, RunResult run) {
        for (Kind kind : foretold.kinds()) {
            for (RunEvent event : run.events(kind)) {
                String what = foretold.isOnce() ? id : id + " " + event.part();
                if (isNews(foretold, event) && matters(run, event) && told.add(what)) {
                    found.add(caution(how, foretold.signal(), event, run).build(id));
                }
            }
        }
    }

    private boolean isNews(Foretold foretold, RunEvent event) {
        return concat(known, found).stream()
                .filter(caution -> foretold.known().contains(caution.id()))
                .noneMatch(caution -> caution.parts().isEmpty() || concerns(caution, event.part()));
    }

    private static List<Caution> concat(List<Caution> one, List<Caution> other) {
        List<Caution> all = new ArrayList<>(one);
        all.addAll(other);
        return all;
    }

    private boolean concerns(Caution caution, String part) {
        return caution.parts().contains(part)
                || RunTexts.link(bench, part)
                        .filter(place -> caution.links().contains(place))
                        .isPresent();
    }

    private boolean matters(RunResult run, RunEvent event) {
        return switch (event.kind()) {
            case REVERSED -> isStillUsed(run, event.atS());
            case BOARD_CUTOFF, BOARD_INPUT_LIMIT, BOARD_NO_POWER ->
                run.trace().stateAt(event.atS()).cells().stream().allMatch(cell -> cell.charge() > LEFT);
            default -> true;
        };
    }

    /** Of the last moment in which the coil got anything: what is kept of a long run may fall into a rest. */
    private static boolean isStillUsed(RunResult run, double atS) {
        double[] watts = run.trace().states().stream()
                .filter(state -> state.timeS() <= atS && watts(state) > 0)
                .mapToDouble(LookAhead::watts)
                .toArray();
        return watts.length == 0 || watts[watts.length - 1] > STILL_USED * watts[0];
    }

    private static double watts(RunState state) {
        return state.coils().stream().mapToDouble(CoilMoment::powerW).sum();
    }

    private CautionBuilder caution(How how, Signal signal, RunEvent event, RunResult run) {
        CautionBuilder caution =
                new CautionBuilder(context, signal).detail("how", how).detail(AHEAD, event.atS());
        if (event.kind() != Kind.REVERSED) {
            caution.measured(
                    event.measured(),
                    event.limit(),
                    RunTexts.unit(event.kind()).base().symbol());
        }
        Optional<Integer> link = RunTexts.link(bench, event.part());
        if (link.isPresent()) {
            var ends = bench.scenario().links().get(link.get());
            caution.parts(ends.from().part(), ends.to().part())
                    .links(List.of(link.get()))
                    .terminal("from", ends.from())
                    .terminal("to", ends.to());
        } else {
            caution.parts(event.part());
        }
        leastCharge(run, event).ifPresent(share -> caution.detail("chargeShare", share));
        return caution;
    }

    private static Optional<Double> leastCharge(RunResult run, RunEvent event) {
        return run.trace().stateAt(event.atS()).cells().stream()
                .map(CellMoment::charge)
                .min(Comparator.naturalOrder());
    }
}
