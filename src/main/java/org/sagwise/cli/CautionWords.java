package org.sagwise.cli;

import java.util.List;
import java.util.stream.Stream;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.CautionNumbers;
import org.sagwise.hazard.CautionTexts;
import org.sagwise.hazard.LookAhead;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** What the command line says of a caution. */
final class CautionWords {

    private final CallContext call;
    private final Texts texts;
    private final Scenario scenario;

    CautionWords(CallContext call, Scenario scenario) {
        this.call = call;
        this.texts = call.texts();
        this.scenario = scenario;
    }

    String title(Caution caution) {
        return CautionTexts.title(caution, call.locale());
    }

    String text(Caution caution) {
        return CautionTexts.text(caution, call.locale());
    }

    String advice(Caution caution) {
        return CautionTexts.advice(caution, call.locale());
    }

    /** Signal word, what it is, where, when, and the number against its limit. */
    List<String> head(Caution caution) {
        String where = String.join(", ", places(caution));
        String first = texts.say(
                "caution.head",
                CautionTexts.signal(caution.signal(), call.locale()),
                title(caution),
                where.isEmpty() ? 0 : 1,
                where);
        String second = LookAhead.atS(caution).isPresent()
                ? texts.say(
                        "caution.when.ahead",
                        call.format().print(LookAhead.atS(caution).getAsDouble(), Unit.SECOND))
                : texts.say("caution.when." + Words.of(when(caution)));
        String numbers = numbers(caution);
        return List.of("  " + first, "    " + second + (numbers.isEmpty() ? "" : ": " + numbers));
    }

    /** Why, and what a competent person would do. */
    List<String> body(Caution caution) {
        return Stream.of(text(caution), texts.say("caution.advice", advice(caution)))
                .flatMap(text -> Paragraph.lines(text, "    ").stream())
                .toList();
    }

    /** Where there is no button, nobody lets go of it. */
    private Caution.When when(Caution caution) {
        return scenario.partsOf(PartKind.SWITCH).isEmpty() ? Caution.When.ALWAYS : caution.when();
    }

    private List<String> places(Caution caution) {
        Names names = Names.in(call.texts().locale());
        Stream<String> parts = caution.parts().stream()
                .flatMap(id -> scenario.part(id).stream())
                .map(names::part);
        Stream<String> links = caution.links().stream()
                .map(scenario.links()::get)
                .map(link -> names.terminal(scenario, link.from()) + " › " + names.terminal(scenario, link.to()));
        return (caution.parts().isEmpty() ? links : parts).toList();
    }

    private String numbers(Caution caution) {
        return CautionNumbers.of(caution, call.format())
                .map(numbers -> numbers.limit()
                        .map(limit -> texts.say("caution.against", numbers.measured(), limit))
                        .orElse(numbers.measured()))
                .orElse("");
    }
}
