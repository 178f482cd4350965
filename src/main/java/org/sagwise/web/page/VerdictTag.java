package org.sagwise.web.page;

import org.sagwise.lesson.Verdict;
import org.sagwise.web.engine.Words;

/** What the learner said beside what came out, and what there is to say about it. */
final class VerdictTag {

    private VerdictTag() {}

    /**
     * With the reply, in the step that answers the question.
     *
     * @param because the reason that the learner wrote; empty without one
     */
    static Tag answering(Verdict verdict, String because, Words words) {
        Tag card = card(verdict);
        sides(card, verdict, words);
        if (!because.isBlank()) {
            card.appendChild(Dom.tag(
                    "p",
                    "side",
                    Dom.tag("span", "mark", ""),
                    Dom.tag("span", "small", words.ui().say("lesson.because")),
                    Dom.tag("span", "said", because)));
        }
        if (verdict.isFirmMiss()) {
            card.appendChild(Dom.tag("p", "small", words.ui().say("lesson.sure.missed")));
        } else if (verdict.isLuck()) {
            card.appendChild(Dom.tag("p", "small", words.ui().say("lesson.sure.lucky")));
        }
        card.appendChild(Rich.of("reply", verdict.reply()));
        verdict.idea()
                .map(idea -> words.ui().say("lesson.idea", idea.sentence(words.locale())))
                .ifPresent(idea -> card.appendChild(Dom.tag("p", "small", idea)));
        return card;
    }

    /** With the question, in the summary. */
    static Tag summing(Verdict verdict, Words words) {
        Tag card = card(verdict);
        card.appendChild(Rich.of("", verdict.question()));
        sides(card, verdict, words);
        return card;
    }

    private static Tag card(Verdict verdict) {
        String side = verdict.said().isEmpty() ? "" : verdict.met() ? " met" : " missed";
        return Dom.tag("div", "verdict" + side, "");
    }

    private static void sides(Tag card, Verdict verdict, Words words) {
        String said = verdict.said().orElseGet(() -> words.ui().say("lesson.said.nothing"));
        String mark = verdict.said().isEmpty() ? "–" : verdict.met() ? "✓" : "✗";
        card.appendChild(side(mark, words.ui().say("lesson.said"), said));
        if (!verdict.met()) {
            card.appendChild(side("", words.ui().say("lesson.came-out"), verdict.right()));
        }
    }

    private static Tag side(String mark, String head, String said) {
        return Dom.tag(
                "p", "side", Dom.tag("span", "mark", mark), Dom.tag("span", "small", head), Rich.inline("said", said));
    }
}
