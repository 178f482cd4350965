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
import org.sagwise.run.RunProgress;
import org.sagwise.run.RunResult;
import org.sagwise.run.RunSettings;
import org.sagwise.run.RunTexts;
import org.sagwise.run.Runner;

/**
 * How long a bench runs when it is pressed in the usual way.
 *
 * @param bench the bench
 * @param result the run
 */
public record Life(Bench bench, RunResult result) {

    /** Larger packs take longer to simulate than anyone waits for a post. */
    private static final int MOST_CELLS = 8;

    /**
     * Additions and multiplications that a run for a post may take: about half a second's worth,
     * since whoever explains a stranger's file must not wait long for it.
     */
    private static final double MOST_EFFORT = 5e8;

    private static final Set<RunEnd> TELLING =
            Set.of(RunEnd.CUTOFF, RunEnd.PROTECTION, RunEnd.BOARD, RunEnd.FUSE, RunEnd.PTC);

    /**
     * Runs a bench down; empty where that says nothing: something grave is wrong with it at once, there is
     * nothing to run, or nothing ends it in good time.
     */
    public static Optional<Life> of(Assessment assessment) {
        Bench bench = assessment.bench();
        boolean grave = assessment.cautions().stream()
                .filter(caution -> LookAhead.atS(caution).isEmpty())
                .anyMatch(caution -> caution.signal().isGrave());
        boolean delivers = bench.fired().pack().deliveredW() > 0;
        if (grave || !delivers || bench.cells().isEmpty() || bench.cells().size() > MOST_CELLS) {
            return Optional.empty();
        }
        RunResult result = Runner.run(bench, RunPlan.USUAL, RunSettings.USUAL, RunProgress.NONE, MOST_EFFORT);
        return TELLING.contains(result.end()) ? Optional.of(new Life(bench, result)) : Optional.empty();
    }

    /** How long it runs, rests between presses included, s. */
    public double runTimeS() {
        return result.last().timeS();
    }

    String duration(Speech speech) {
        return speech.print(runTimeS(), Unit.SECOND);
    }

    String sentence(Speech speech) {
        RunTexts texts = new RunTexts(bench, speech.format());
        List<String> left = result.last().cells().stream()
                .map(cell ->
                        speech.say("life.left", speech.name(cell.id()), speech.print(cell.charge(), Unit.FRACTION)))
                .toList();
        boolean hasButton = !bench.scenario().partsOf(PartKind.SWITCH).isEmpty();
        return speech.say(
                hasButton ? "life" : "life.no-button",
                speech.print(RunPlan.USUAL.onS(), Unit.SECOND),
                speech.print(RunPlan.USUAL.offS(), Unit.SECOND),
                duration(speech),
                String.valueOf(result.last().presses()),
                result.events().isEmpty()
                        ? texts.end(result.end())
                        : stripped(texts.sentence(
                                result.events().get(result.events().size() - 1))),
                String.join(", ", left));
    }

    private static String stripped(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }
}
