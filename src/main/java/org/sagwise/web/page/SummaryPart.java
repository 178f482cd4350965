package org.sagwise.web.page;

import java.util.List;
import org.sagwise.lesson.LearnedCode;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Verdict;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;
import org.sagwise.web.lesson.SummaryText;

/** What the learner said in the whole lesson, beside what came out; to keep, to print, and as a code. */
final class SummaryPart {

    private SummaryPart() {}

    static void fill(Tag room, LessonRun run, Words words) {
        LessonPlayer now = run.player();
        List<Verdict> all = now.summary();
        StepPart.kind(room, words.ui().say("lesson.summary"));
        Tag count = Dom.tag("p", "lesson-text", SummaryText.count(all, words));
        count.setId("lesson-count");
        room.appendChild(count);
        room.appendChild(Dom.tag("p", "small", words.ui().say("lesson.summary.meaning")));
        room.appendChild(Dom.tag(
                "p",
                "",
                words.ui().say("lesson.summary.goal", now.lesson().goal().in(words.locale()))));
        code(room, LearnedCode.of(now).text(), words);
        Tag said = Dom.tag("p", "small", words.say(Store.isLasting() ? "lesson.kept" : "lesson.not-kept"));
        said.setId("lesson-kept");
        Tag save = Dom.button(
                "", words.say("lesson.save"), () -> Dom.save(now.lesson().id() + ".txt", SummaryText.of(now, words)));
        save.setId("lesson-save");
        Tag print = Dom.button("", words.say("print"), Dom::print);
        print.setId("lesson-print");
        room.appendChild(Dom.tag("div", "deeds", save, print));
        room.appendChild(said);
        all.forEach(it -> room.appendChild(VerdictTag.summing(it, words)));
    }

    /** A code for who teaches, to copy or to read out. */
    static void code(Tag room, String text, Words words) {
        Tag code = Dom.tag("code", "learned", text);
        code.setId("lesson-code");
        Tag said = Dom.tag("p", "small", "");
        said.setAttribute("role", "status");
        Tag copy = Dom.button("", words.say("lesson.code.copy"), () -> {
            Dom.copy(text);
            said.setTextContent(words.say("lesson.code.copied"));
        });
        copy.setId("lesson-code-copy");
        room.appendChild(Dom.tag(
                "div",
                "code-box",
                Dom.tag("p", "", words.say("lesson.code")),
                code,
                Dom.tag("div", "deeds", copy),
                said));
    }
}
