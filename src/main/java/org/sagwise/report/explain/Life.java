package org.sagwise.report.explain;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.assessment.Assessment;
import org.sagwise.hazard.LookAhead;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Bench;
import org.sagwise.run.RunEnd;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunTexts;
import org.sagwise.run.UsualRun;

/**
 * How long a bench runs when it is pressed in the usual way.
 *
 * @param bench the bench
 * @param result the run
 * @param isGrave whether something grave is wrong with it, so that nobody should try it
 */
public record Life(Bench bench, RunResult result, boolean isGrave) {

    private static final Set<RunEnd> TELLING = Set.of(
            RunEnd.CUTOFF,
            RunEnd.PROTECTION,
            RunEnd.BOARD,
            RunEnd.FUSE,
            RunEnd.PTC,
            RunEnd.CELL_PTC,
            RunEnd.VENTED,
            RunEnd.INTERRUPTED,
            RunEnd.COIL_MELTED,
            RunEnd.WIRE_MELTED);

    /** A short circuit pulls any cell below its cut-off at once: that says nothing of how long it runs, s. */
    private static final double LEAST_S = 0.1;

    /**
     * How long a bench lasts; empty where its run says nothing of that: it is too large, there is nothing to run, or
     * nothing ends it in good time.
     *
     * @param run how it ends if pressed in the usual way, see {@link UsualRun}
     */
    public static Optional<Life> of(Assessment assessment, Optional<RunResult> run) {
        boolean grave = assessment.cautions().stream()
                .filter(caution -> LookAhead.atS(caution).isEmpty())
                .anyMatch(caution -> caution.signal().isGrave());
        return run.filter(Life::isTelling).map(result -> new Life(assessment.bench(), result, grave));
    }

    private static boolean isTelling(RunResult result) {
        boolean atOnce = result.end() == RunEnd.CUTOFF && result.last().timeS() < LEAST_S;
        return TELLING.contains(result.end()) && !atOnce;
    }

    /** How long it runs, rests between presses included, s. */
    public double runTimeS() {
        return result.last().timeS();
    }

    String duration(Speech speech) {
        return speech.print(runTimeS(), Unit.SECOND);
    }

    String sentence(Speech speech) {
        List<String> left = result.last().cells().stream()
                .map(cell ->
                        speech.say("life.left", speech.name(cell.id()), speech.print(cell.charge(), Unit.FRACTION)))
                .toList();
        return speech.say(
                key(),
                speech.print(RunPlan.USUAL.onS(), Unit.SECOND),
                speech.print(RunPlan.USUAL.offS(), Unit.SECOND),
                duration(speech),
                result.last().presses(),
                ending(speech),
                String.join(", ", left),
                String.valueOf(result.last().presses()));
    }

    private String key() {
        if (isGrave) {
            return "life.grave";
        }
        if (!hasButton()) {
            return "life.no-button";
        }
        return result.last().timeS() < RunPlan.USUAL.onS() ? "life.at-once" : "life";
    }

    /** The same in a few words. */
    String brief(Speech speech) {
        String key = isGrave
                ? "life.brief-grave"
                : !hasButton()
                        ? "life.brief-no-button"
                        : runTimeS() < RunPlan.USUAL.onS() ? "life.brief-at-once" : "life.brief";
        return speech.say(
                key,
                speech.print(RunPlan.USUAL.onS(), Unit.SECOND),
                speech.print(RunPlan.USUAL.onS() + RunPlan.USUAL.offS(), Unit.SECOND),
                duration(speech),
                new RunTexts(bench, speech.format()).end(result.end()));
    }

    private boolean hasButton() {
        return !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
    }

    private String ending(Speech speech) {
        RunTexts texts = new RunTexts(bench, speech.format());
        return result.events().isEmpty()
                ? texts.end(result.end())
                : stripped(texts.sentence(result.events().get(result.events().size() - 1)));
    }

    private static String stripped(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
