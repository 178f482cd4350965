package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioRules;
import org.sagwise.scenario.edit.Edit;
import org.sagwise.scenario.edit.JoinTerminals;
import org.sagwise.scenario.edit.JointChoice;

/**
 * Whoever joins by a wire or by a contact, and not without resistance as the author did, has built the same thing: the
 * step has to see that.
 */
final class JointLint {

    private static final List<JointChoice> OTHERS = List.of(JointChoice.WIRE, JointChoice.CONTACT);

    private JointLint() {}

    static void check(String place, Step.Do task, Situation before, ScenarioRules rules, LintReport report) {
        if (task.solution().stream().noneMatch(JointLint::isIdeal)) {
            return;
        }
        Situation solved = before.with(Edit.made(task.solution(), before.scenario(), rules));
        for (JointChoice kind : OTHERS) {
            List<Edit> moves = new ArrayList<>();
            task.solution().forEach(move -> moves.add(isIdeal(move) ? by(kind, (JoinTerminals) move) : move));
            Scenario built = Edit.made(moves, before.scenario(), rules);
            Situation there = before.with(built);
            for (int i = 0; i < task.until().size(); i++) {
                Condition condition = task.until().get(i);
                // What the author's own joints do not make true either is told already.
                if (condition.holds(solved) && !condition.holds(there)) {
                    report.add(
                            place + ".until[" + i + "]",
                            LessonProblem.JOINT_MATTERS,
                            kind.name().toLowerCase(Locale.ROOT),
                            told(condition, there));
                }
            }
        }
    }

    private static boolean isIdeal(Edit move) {
        return move instanceof JoinTerminals join && join.joint().has("ideal");
    }

    private static Edit by(JointChoice kind, JoinTerminals join) {
        return new JoinTerminals(join.terminals(), kind.joint());
    }

    private static String told(Condition condition, Situation there) {
        return condition instanceof Condition.ReadingIs reading
                        && there.read(reading.ref()).isPresent()
                ? LintReport.rounded(there.read(reading.ref()).getAsDouble())
                : "–";
    }
}
