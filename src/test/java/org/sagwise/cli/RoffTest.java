package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RoffTest {

    /** Escapes as groff(7) has them. */
    @Test
    void line_wordsThatLookLikeRequests_areTakenAsWords() {
        Roff roff = new Roff();
        roff.line(".SH no \\fBheading\\fP --at-all");
        assertEquals("\\&.SH no \\efBheading\\efP \\-\\-at\\-all\n", roff.text());
    }

    @Test
    void section_titleWithQuotes_staysOneArgument() {
        Roff roff = new Roff();
        roff.section("A \"title\"");
        roff.paragraph("first");
        roff.paragraph("second");
        assertEquals(".SH \"A \\(dqtitle\\(dq\"\nfirst\n.PP\nsecond\n", roff.text());
    }
}
