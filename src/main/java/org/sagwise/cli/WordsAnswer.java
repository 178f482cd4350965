package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.words.Complaint;
import org.sagwise.words.Span;
import org.sagwise.words.WordsBench;

/** What there is to say about a line of words: what was assumed, or what is wrong, under the place where it is. */
final class WordsAnswer {

    /** So much of a line is shown around a place. */
    private static final int AROUND = 30;

    private final CallContext call;

    WordsAnswer(CallContext call) {
        this.call = call;
    }

    /** What was assumed, in one paragraph; nothing where all was said. */
    static Optional<String> assumed(CallContext call, WordsBench.Built built) {
        String all = built.assumed().stream().map(it -> it.text(call.locale())).collect(Collectors.joining(" "));
        return all.isEmpty() ? Optional.empty() : Optional.of(call.texts().say("new.assumed", all));
    }

    void complain(String line, List<Complaint> complaints) {
        String shown = line.replaceAll("\\s", " ");
        for (Complaint complaint : complaints) {
            call.problem(complaint.text(call.locale()));
            if (!shown.isBlank()) {
                mark(shown, complaint.span());
            }
        }
    }

    private void mark(String line, Span span) {
        int from = Math.max(0, span.start() - AROUND);
        int to = Math.min(line.length(), Math.max(span.end(), span.start() + 1) + AROUND);
        String before = call.printable(line.substring(from, Math.min(span.start(), line.length())));
        String marked = call.printable(
                line.substring(Math.min(span.start(), line.length()), Math.min(span.end(), line.length())));
        String behind = call.printable(line.substring(Math.min(span.end(), to), to));
        call.problem("  " + before + marked + behind);
        call.problem("  " + " ".repeat(before.length())
                + "^".repeat(Math.max(1, Math.min(marked.length(), 2 * AROUND))));
    }
}
