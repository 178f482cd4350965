package org.sagwise.web.page;

import org.sagwise.lesson.RecallRound;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;

/** A question of an earlier lesson, before another one begins. */
final class RecallPart {

    private RecallPart() {}

    static void fill(Tag room, LessonRun run, Words words, Hand hand) {
        RecallRound round = run.recall().orElseThrow();
        RecallRound.Asked asked = round.question();
        StepPart.kind(room, words.ui().say("lesson.recall"));
        room.appendChild(Dom.tag(
                "p",
                "small",
                words.ui()
                        .say("lesson.recall.from", asked.item().lesson().title().in(words.locale()))));
        room.appendChild(Rich.of("lesson-text", asked.text()));
        room.appendChild(ChoicesTag.of(
                asked.options(),
                round.chosen().isEmpty(),
                asked.right(),
                round.chosen().orElse(-1),
                place -> hand.change(() -> run.choose(place))));
        if (round.chosen().isPresent()) {
            Tag reply = Rich.of(
                    round.isMet() ? "done" : "note",
                    asked.replies().get(round.chosen().getAsInt()));
            reply.setId("lesson-status");
            reply.setAttribute("role", "status");
            room.appendChild(reply);
        }
    }
}
