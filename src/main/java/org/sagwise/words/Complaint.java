package org.sagwise.words;

import java.util.Locale;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Finding;
import org.sagwise.text.Texts;

/**
 * One thing that is wrong with a line.
 *
 * @param span where
 * @param finding what
 */
public record Complaint(Span span, Finding finding) {

    static Complaint of(Span span, Fault fault, String... details) {
        return new Complaint(span, Finding.of("", fault, details));
    }

    /** What is wrong and what would be right, without the place. */
    public String sentence(Locale locale) {
        return finding.sentence(locale);
    }

    /** The same with its place. */
    public String text(Locale locale) {
        return Texts.in("words", locale).say("at-column", String.valueOf(span.column()), sentence(locale));
    }
}
