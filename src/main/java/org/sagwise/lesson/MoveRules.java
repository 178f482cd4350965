package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.scenario.Scenario;

/** Finds moves that do nothing because what they speak of is not on the bench. */
public final class MoveRules {

    private MoveRules() {}

    /**
     * @param place of the list of moves, as in {@code steps[2].solution}
     * @param moves done one after the other
     * @param before the bench before the first of them
     */
    public static List<LessonFinding> check(String place, List<Move> moves, Scenario before) {
        List<LessonFinding> findings = new ArrayList<>();
        Scenario bench = before;
        for (int i = 0; i < moves.size(); i++) {
            findings.addAll(check(place + "[" + i + "]", moves.get(i), bench));
            bench = moves.get(i).apply(bench);
        }
        return findings;
    }

    private static List<LessonFinding> check(String place, Move move, Scenario bench) {
        List<LessonFinding> findings = new ArrayList<>();
        for (String part : move.parts()) {
            if (bench.part(part).isEmpty()) {
                findings.add(LessonFinding.of(place, LessonProblem.UNKNOWN_PART, part));
            }
        }
        if (move instanceof LinkMove.Mend mend && !mend.fits(bench)) {
            findings.add(LessonFinding.of(place, LessonProblem.UNKNOWN_LINK, mend.link()));
        }
        if (move instanceof LinkMove.Cut cut && findings.isEmpty() && !cut.fits(bench)) {
            String from = cut.from().toString();
            String to = cut.to().toString();
            findings.add(LessonFinding.of(place, LessonProblem.NOTHING_TO_CUT, from, to));
        }
        return findings;
    }
}
