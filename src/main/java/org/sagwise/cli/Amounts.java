package org.sagwise.cli;

import org.sagwise.quantity.Measure;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.quantity.Unit;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/**
 * Reads amounts that stand behind options; whatever is wrong is told with the option's name.
 *
 * @param call the call
 * @param verb whose options they are
 */
record Amounts(CallContext call, CommandSpec verb) {

    /** An amount in a unit, or in the scale in which a bare number is meant. */
    double any(String option, String text, Measure bare) {
        Parsed parsed = new QuantityParser(call.locale()).parse(text, bare);
        if (parsed instanceof Parsed.Value value) {
            return value.amount();
        }
        throw wrong(option + ": " + ((Parsed.Refused) parsed).text(call.locale()));
    }

    /** The same above zero. */
    double above(String option, String text, Measure bare) {
        double amount = any(option, text, bare);
        if (!(amount > 0)) {
            throw wrong(call.texts().say("measured.not-above", option, text));
        }
        return amount;
    }

    double above(String option, String text, Unit unit) {
        return above(option, text, Measure.of(unit));
    }

    /** The same from zero on. */
    double fromZero(String option, String text, Measure bare) {
        double amount = any(option, text, bare);
        if (!(amount >= 0)) {
            throw wrong(call.texts().say("wrong.below-zero", option, text));
        }
        return amount;
    }

    /** What ends a call that is wrong. */
    ParameterException wrong(String words) {
        return new ParameterException(verb.commandLine(), words);
    }
}
