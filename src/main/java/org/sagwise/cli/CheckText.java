package org.sagwise.cli;

import java.util.List;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** The cautions of a file, each with why and what to do, for people. */
final class CheckText {

    private final CallContext call;

    CheckText(CallContext call) {
        this.call = call;
    }

    /** Prints them; silent about a file that could not be read, which was complained about. */
    void print(CheckedFile checked) {
        checked.given().scenario().ifPresent(scenario -> print(checked, scenario));
    }

    private void print(CheckedFile checked, Scenario scenario) {
        String name = new ScenarioInput(call).shown(checked.given().name());
        int count = checked.cautions().size();
        call.result(call.texts().say(count == 0 ? "check.none" : "check.found", name, count));
        CautionWords words = new CautionWords(call, scenario);
        for (Caution caution : checked.cautions()) {
            call.result("");
            words.head(caution).forEach(line -> call.result(caution.signal(), line));
            words.body(caution).forEach(call::result);
            checked.curesOf(caution, call.locale()).stream()
                    .map(cure -> call.texts().say("caution.cure", cure))
                    .flatMap(text -> Paragraph.lines(text, "    ").stream())
                    .forEach(call::result);
            spent(scenario, caution);
        }
        if (count > 0) {
            call.result("");
        }
    }

    /** Cells that no cure makes usable again. */
    private void spent(Scenario scenario, Caution caution) {
        List<Part> spent = Hazards.spentCells(scenario, List.of(caution));
        if (!spent.isEmpty()) {
            String names = Names.in(call.locale()).parts(spent);
            Paragraph.lines(call.texts().say("caution.spent", names, spent.size()), "    ")
                    .forEach(call::result);
        }
    }
}
