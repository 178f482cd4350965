package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.assessment.fix.Fix;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Hazards;
import org.sagwise.hazard.LookAhead;
import org.sagwise.hazard.Signal;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.CellReading;
import org.sagwise.reading.CoilReading;
import org.sagwise.reading.Readings;
import org.sagwise.report.explain.ExplainedPost.Size;
import org.sagwise.report.post.Block;
import org.sagwise.report.symptom.Evidence;
import org.sagwise.report.symptom.SymptomAnswer;
import org.sagwise.run.RunEnd;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;

/**
 * The answer that a post begins with, and that a short post is: verdict, the number that matters against its limit,
 * the symptom that was asked about, what to do now, what the layout should have been. What would make it longer than
 * anybody reads is left out, the least important first.
 */
final class ShortAnswer {

    /** The longest short post, words. */
    static final int MOST_WORDS = 150;

    /** Less than this warms nothing, W. */
    private static final double LEAST_POWER_W = 1e-3;

    /** A number that prints as zero says nothing against a limit, nor does a limit that prints as zero. */
    private static final double NOTHING = 1e-3;

    /** So many steps of a cure are told. */
    private static final int MOST_STEPS = 3;

    /** Cautions whose number is one of a joint and not of a part. */
    private static final Set<String> ABOUT_A_JOINT =
            Set.of("jumper-over-ampacity", "jumper-over-fusing", "joint-hot", "ahead-wire-melts");

    /** Cautions whose own words say more than a number beside a limit: whose limit it is, which way it flows. */
    private static final Set<String> IN_OWN_WORDS = Set.of("board-asks-too-much", "unequal-charge-in-parallel");

    /** Where a sentence stands in the post. */
    private enum Place {
        VERDICT,
        SYMPTOM,
        NOW,
        LAYOUT,
        NOTICE
    }

    /**
     * A sentence of the post.
     *
     * @param place the paragraph it stands in
     * @param rank how soon it is left out if there are too many words: the highest first
     */
    private record Piece(Place place, int rank, String text) {

        int words() {
            return text.strip().split("\\s+").length;
        }
    }

    private final Speech speech;
    private final Evidence evidence;
    private final Assessment assessment;
    private final Optional<Cure> cure;
    private final Optional<Life> life;
    private final Size size;
    private final List<Piece> pieces = new ArrayList<>();

    private ShortAnswer(Speech speech, Evidence evidence, Optional<Cure> cure, Optional<Life> life, Size size) {
        this.speech = speech;
        this.evidence = evidence;
        this.assessment = evidence.assessment();
        this.cure = cure;
        this.life = life;
        this.size = size;
    }

    /**
     * The answer: all there is of a short post, or what a long one begins with.
     *
     * @param asked what somebody wrote that does not work
     */
    static List<Block> of(
            Speech speech,
            Evidence evidence,
            Optional<Cure> cure,
            Optional<Life> life,
            Optional<String> asked,
            Size size) {
        ShortAnswer answer = new ShortAnswer(speech, evidence, cure, life, size);
        answer.write(asked);
        if (size == Size.SHORT) {
            answer.add(Place.NOTICE, 0, speech.say("short.notice"));
            answer.shorten();
        }
        return answer.blocks();
    }

    private void write(Optional<String> asked) {
        verdict();
        asked.filter(words -> !words.isBlank()).ifPresent(this::symptom);
        now();
        layout();
    }

    private void symptom(String asked) {
        SymptomAnswer answer = SymptomAnswer.to(
                asked, evidence, speech.locale(), speech.format().signs());
        add(Place.SYMPTOM, 1, answer.cause());
        answer.test().ifPresent(test -> add(Place.SYMPTOM, 3, test));
    }

    private void verdict() {
        String shape = new Shape(speech, assessment.bench()).line();
        List<Caution> cautions = assessment.cautions();
        if (cautions.isEmpty()) {
            boolean isLoose = assessment.scenario().links().isEmpty();
            add(Place.VERDICT, 0, shape + " " + speech.say(isLoose ? "verdict.loose" : "verdict.none"));
            load(assessment).ifPresent(text -> add(Place.VERDICT, 3, speech.sentence(text) + "."));
            life().ifPresent(text -> add(Place.VERDICT, 6, text));
            return;
        }
        Caution worst = cautions.get(0);
        String title = CautionTexts.title(worst, speech.locale());
        add(Place.VERDICT, 0, shape + " " + speech.say("verdict." + gravity(worst.signal()), title));
        add(Place.VERDICT, 1, number(worst));
        also(cautions, title).ifPresent(text -> add(Place.VERDICT, 5, text));
        life().ifPresent(text -> add(Place.VERDICT, 6, text));
    }

    private String gravity(Signal worst) {
        if (worst == Signal.DANGER) {
            return "danger";
        }
        if (worst.isGrave()) {
            return "grave";
        }
        boolean works = assessment.bench().fired().pack().deliveredW() > LEAST_POWER_W;
        boolean isMeant = assessment.scenario().parts().stream()
                .anyMatch(part -> part.kind() == PartKind.COIL || part.kind() == PartKind.RESISTOR);
        return works || !isMeant ? "mild" : "dead";
    }

    /** The number against its limit; of a caution that has none, its text. */
    private String number(Caution worst) {
        Optional<Unit> unit = Unit.ofSymbol(worst.unit());
        if (unit.isEmpty()
                || !(worst.measured() > NOTHING)
                || !(Math.abs(worst.limit()) > NOTHING)
                || IN_OWN_WORDS.contains(worst.id())) {
            return CautionTexts.text(worst, speech.locale());
        }
        boolean hasButton = !assessment.scenario().partsOf(PartKind.SWITCH).isEmpty();
        String measured = Double.isInfinite(worst.measured())
                ? speech.say("short.no-end")
                : speech.print(worst.measured(), unit.get());
        if (worst.isOfAMoment() && Double.isFinite(worst.measured())) {
            measured = speech.say("short.moment", measured);
        }
        return speech.sentence(speech.say(
                hasButton && worst.when() != Caution.When.ALWAYS
                        ? "short.number-" + (worst.when() == Caution.When.AT_REST ? "let-go" : "held")
                        : "short.number",
                about(worst),
                measured,
                speech.print(worst.limit(), unit.get())));
    }

    /** The joint or part that a caution is about. */
    private String about(Caution caution) {
        if (!caution.links().isEmpty() && ABOUT_A_JOINT.contains(caution.id())) {
            Link link = assessment.scenario().links().get(caution.links().get(0));
            JointWords words = new JointWords(speech);
            String key = caution.id().equals("joint-hot") ? "short.joint" : "short.wire";
            return speech.say(key, words.terminal(link.from()), words.terminal(link.to()));
        }
        return caution.parts().isEmpty()
                ? speech.say("short.it")
                : speech.name(caution.parts().get(0));
    }

    private Optional<String> also(List<Caution> cautions, String title) {
        List<String> others = cautions.stream()
                .skip(1)
                .map(caution -> CautionTexts.title(caution, speech.locale()))
                .filter(other -> !other.equals(title))
                .distinct()
                .toList();
        return others.isEmpty()
                ? Optional.empty()
                : Optional.of(speech.say(
                        "short.also", String.join("; ", others.subList(0, Math.min(3, others.size())))));
    }

    /**
     * How long it runs; of what nobody should try only what stops it. Where something grave is foreseen, its own
     * sentence has the time.
     */
    private Optional<String> life() {
        boolean foreseen = assessment.cautions().stream()
                .anyMatch(caution ->
                        caution.signal().isGrave() && LookAhead.atS(caution).isPresent());
        return life.filter(told -> !foreseen)
                .filter(told -> !told.isGrave() || told.result().end() != RunEnd.CUTOFF)
                .map(told -> told.brief(speech));
    }

    /** What cannot wait, or what the gravest caution advises. */
    private void now() {
        List<Caution> cautions = assessment.cautions();
        if (cautions.isEmpty()) {
            return;
        }
        boolean hurts = cautions.get(0).signal().isGrave()
                && !assessment.scenario().partsOf(PartKind.CELL).isEmpty();
        if (!hurts) {
            add(Place.NOW, 4, CautionTexts.advice(cautions.get(0), speech.locale()));
            return;
        }
        boolean charged = !assessment.scenario().partsOf(PartKind.CHARGER).isEmpty();
        add(
                Place.NOW,
                1,
                speech.say((size == Size.SHORT ? "short.first" : "todo.first") + (charged ? "-charger" : "")));
        List<Part> spent = Hazards.spentCells(assessment.scenario(), cautions);
        if (!spent.isEmpty()) {
            add(Place.NOW, 1, speech.say("short.spent", speech.names(spent), spent.size()));
        }
        if (cure.isEmpty()) {
            add(Place.NOW, 4, CautionTexts.advice(cautions.get(0), speech.locale()));
        }
    }

    private void layout() {
        if (cure.isEmpty()) {
            if (!assessment.cautions().isEmpty()) {
                boolean cold = assessment.cautions().stream()
                        .allMatch(caution -> caution.id().equals("cell-cold"));
                add(Place.LAYOUT, 3, speech.say(cold ? "short.no-cure-cold" : "short.no-cure"));
            }
            return;
        }
        List<Fix> steps = cure.get().steps();
        String told = steps.stream()
                .limit(MOST_STEPS)
                .map(fix -> fix.name(speech.locale()))
                .collect(Collectors.joining(". "));
        boolean otherCells = !Hazards.spentCells(assessment.scenario(), assessment.cautions())
                .isEmpty();
        String key = otherCells ? "short.layout-other-cells" : "short.layout";
        add(Place.LAYOUT, 2, speech.say(steps.size() > MOST_STEPS ? key + "-and-more" : key, told));
        Assessment after = cure.get().after();
        load(after).ifPresent(text -> add(Place.LAYOUT, 4, speech.say("short.then", text)));
        left(after.cautions()).ifPresent(text -> add(Place.LAYOUT, 3, text));
    }

    private Optional<String> left(List<Caution> cautions) {
        if (cautions.isEmpty()) {
            return Optional.empty();
        }
        String title = CautionTexts.title(cautions.get(0), speech.locale());
        return Optional.of(speech.say(cautions.get(0).signal().isGrave() ? "short.not-enough" : "short.left", title));
    }

    /** What the cell that works hardest gives, and what the coils get. */
    private Optional<String> load(Assessment bench) {
        Readings fired = bench.bench().fired();
        Optional<CellReading> hardest = fired.cells().stream()
                .filter(cell -> cell.currentA() > LEAST_POWER_W && Double.isFinite(cell.currentA()))
                .max(Comparator.comparingDouble(
                        cell -> Double.isNaN(cell.limitA()) ? cell.currentA() / 1e6 : cell.loadFraction()));
        double coilW = fired.coils().stream().mapToDouble(CoilReading::powerW).sum();
        return hardest.filter(cell -> coilW > LEAST_POWER_W)
                .map(cell -> speech.say(
                        Double.isNaN(cell.limitA()) ? "short.load-unknown" : "short.load",
                        speech.name(cell.id()),
                        speech.print(cell.currentA(), Unit.AMPERE),
                        speech.print(cell.limitA(), Unit.AMPERE),
                        speech.print(coilW, Unit.WATT),
                        fired.coils().size()));
    }

    private void add(Place place, int rank, String text) {
        pieces.add(new Piece(place, rank, text));
    }

    private void shorten() {
        while (pieces.stream().mapToInt(Piece::words).sum() > MOST_WORDS && pieces.size() > 1) {
            Piece least = pieces.stream()
                    .max(Comparator.comparingInt(Piece::rank).thenComparing(Piece::place))
                    .orElseThrow();
            pieces.remove(least);
        }
    }

    private List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        for (Place place : Place.values()) {
            String text = pieces.stream()
                    .filter(piece -> piece.place() == place)
                    .map(Piece::text)
                    .collect(Collectors.joining(" "));
            if (!text.isEmpty()) {
                blocks.add(place == Place.NOTICE ? new Block.Notice(text) : new Block.Paragraph(text));
            }
        }
        return blocks;
    }
}
