package org.sagwise.lesson;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.text.LocalText;

/** All texts of a step, with the key each stands under and the time at which it is read. */
final class StepTexts {

    /** When a text is read. */
    enum Time {
        AT_STEP,
        AFTERWARDS
    }

    /**
     * A text.
     *
     * @param key where it stands in the step
     * @param text the text
     * @param time when it is read
     * @param invented whether its numbers may be made up: a wrong answer's are
     */
    record Said(String key, LocalText text, Time time, boolean invented) {}

    private StepTexts() {}

    static List<Said> of(Step step) {
        List<Said> said = new ArrayList<>();
        said.add(new Said("text", step.head().text(), Time.AT_STEP, false));
        if (step instanceof Step.Choose choose) {
            for (int i = 0; i < choose.choices().size(); i++) {
                Choice choice = choose.choices().get(i);
                String key = "choices[" + i + "]";
                said.add(new Said(key + ".text", choice.text(), Time.AT_STEP, !choice.isRight()));
                said.add(new Said(key + ".reply", choice.reply(), Time.AFTERWARDS, false));
            }
        } else if (step instanceof Step.Estimate estimate) {
            said.add(new Said("reply", estimate.reply(), Time.AFTERWARDS, false));
        } else if (step instanceof Step.Do task) {
            hints(said, task.hints());
        } else if (step instanceof Step.Measure measure) {
            hints(said, measure.hints());
        } else if (step instanceof Step.Write write) {
            for (int i = 0; i < write.points().size(); i++) {
                said.add(new Said("points[" + i + "]", write.points().get(i), Time.AT_STEP, false));
            }
            said.add(new Said("model", write.model(), Time.AT_STEP, false));
        } else if (step instanceof Step.Caution caution) {
            said.add(new Said("harm", caution.harm(), Time.AT_STEP, false));
            said.add(new Said("avoid", caution.avoid(), Time.AT_STEP, false));
        }
        return said;
    }

    private static void hints(List<Said> said, List<LocalText> hints) {
        for (int i = 0; i < hints.size(); i++) {
            said.add(new Said("hints[" + i + "]", hints.get(i), Time.AT_STEP, false));
        }
    }
}
