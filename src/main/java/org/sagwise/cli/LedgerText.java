package org.sagwise.cli;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.part.Role;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.reading.Ledger;
import org.sagwise.reading.Readings;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** The account of volts and watts, for people. */
final class LedgerText {

    /** Enough for a reader to add the column up. */
    private static final Digits DIGITS = Digits.decimals(3);

    private LedgerText() {}

    static List<String> lines(CallContext call, Scenario scenario, Readings readings) {
        Texts texts = call.texts();
        if (readings.pack().givenW() == 0) {
            return List.of(texts.say("ledger.nothing"));
        }
        if (Double.isNaN(readings.pack().givenW())) {
            return List.of(texts.say("ledger.untold"));
        }
        TextTable table = TextTable.headed(call, "ledger", "volts", "power");
        for (Ledger.Row row : Ledger.of(readings).rows()) {
            table.row(
                    call.printable(texts.say("ledger." + Words.of(row.entry()))),
                    call.format().print(row.voltsV(), Unit.VOLT.base(), DIGITS),
                    call.format().print(row.powerW(), Unit.WATT.base(), DIGITS));
        }
        List<String> lines = new ArrayList<>(table.lines());
        if (hasLoad(scenario) && !Double.isNaN(readings.pack().efficiency())) {
            lines.add(arrives(call, readings));
        }
        return lines;
    }

    private static String arrives(CallContext call, Readings readings) {
        QuantityFormat format = call.format();
        return call.texts()
                .say(
                        "ledger.arrives",
                        format.print(readings.pack().givenW(), Unit.WATT),
                        format.print(readings.pack().deliveredW(), Unit.WATT),
                        format.print(readings.pack().efficiency(), Unit.FRACTION));
    }

    private static boolean hasLoad(Scenario scenario) {
        return scenario.parts().stream().anyMatch(part -> part.kind().role() == Role.LOAD);
    }
}
