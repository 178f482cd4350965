package org.sagwise.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.Signal;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.text.Printable;
import org.sagwise.text.Signs;
import org.sagwise.text.Texts;

/**
 * What one call of the program works with: where its words go, and in which language and signs.
 *
 * @param out takes results
 * @param err takes problems
 * @param in where {@code -} reads from
 * @param opener opens the window, where one is asked for
 * @param asked language and decimal mark that the call names, if it names them
 * @param locale language and decimal mark of what people read
 * @param signs whether the terminal knows more than ASCII
 * @param ink whether the terminal shows colours
 */
record CallContext(
        PrintWriter out,
        PrintWriter err,
        InputStream in,
        WindowOpener opener,
        Optional<Locale> asked,
        Locale locale,
        Signs signs,
        Ink ink) {

    /** The sentences of the command line in this call's language. */
    Texts texts() {
        return Texts.in("cli-words", locale);
    }

    QuantityFormat format() {
        return new QuantityFormat(locale, signs);
    }

    /** A text as this call's terminal can show it. */
    String printable(String text) {
        return Printable.line(text, signs);
    }

    /** Prints a line of the result. */
    void result(String line) {
        out.println(printable(line));
    }

    /** Prints a line of the result that begins with how grave something is. */
    void result(Signal signal, String line) {
        out.println(ink.paint(signal, printable(CautionTexts.signal(signal, locale)), printable(line)));
    }

    /** Prints a line about something that is wrong. */
    void problem(String line) {
        err.println(printable(line));
    }
}
