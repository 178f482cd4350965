package org.sagwise.web.lesson;

import java.util.List;
import org.sagwise.lesson.LearnedCode;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Verdict;
import org.sagwise.web.engine.Words;

/** What came of a lesson as plain text, to be kept in a file. */
public final class SummaryText {

    private SummaryText() {}

    /** How many answers agree with what came out. */
    public static String count(List<Verdict> all, Words words) {
        long answered = all.stream().filter(it -> it.said().isPresent()).count();
        long met = all.stream().filter(Verdict::met).count();
        long open = all.size() - answered;
        String count = words.ui().say("lesson.summary.count", met, answered);
        String whole = open == 0 ? count : count + " " + words.ui().say("lesson.summary.open", open);
        long sure = all.stream().filter(Verdict::isSure).count();
        long right = all.stream().filter(it -> it.isSure() && it.met()).count();
        return sure == 0 ? whole : whole + " " + words.ui().say("lesson.summary.sure", sure, right);
    }

    public static String of(LessonPlayer now, Words words) {
        List<Verdict> all = now.summary();
        StringBuilder text = new StringBuilder(now.lesson().title().in(words.locale()))
                .append("\n\n")
                .append(words.ui()
                        .say("lesson.summary.goal", now.lesson().goal().in(words.locale())))
                .append("\n")
                .append(count(all, words))
                .append("\n")
                .append(LearnedCode.of(now).text())
                .append("\n");
        for (Verdict verdict : all) {
            text.append("\n").append(plain(verdict.question())).append("\n");
            line(
                    text,
                    words.ui().say("lesson.said"),
                    verdict.said().orElse(words.ui().say("lesson.said.nothing")));
            if (!verdict.met()) {
                line(text, words.ui().say("lesson.came-out"), verdict.right());
            }
        }
        return text.append("\n").append(words.say("notice")).append("\n").toString();
    }

    private static void line(StringBuilder text, String head, String said) {
        text.append("  ").append(head).append(": ").append(plain(said)).append("\n");
    }

    /** Without the signs of emphasis. */
    private static String plain(String markdown) {
        StringBuilder plain = new StringBuilder();
        for (RichText.Block block : RichText.of(markdown)) {
            plain.append(plain.isEmpty() ? "" : "\n").append(block.lead());
            block.runs().forEach(run -> plain.append(run.text()));
        }
        return plain.toString();
    }
}
