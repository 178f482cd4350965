package org.sagwise.words;

import java.util.Locale;
import org.sagwise.part.PartKind;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Texts;

/** What a bench made of a line is called. */
final class Titles {

    private Titles() {}

    static String of(Scenario bench, Recipe recipe, Locale locale) {
        Texts texts = Texts.in("words", locale);
        String pack = recipe.count() == 1
                ? texts.say("title.one")
                : texts.say("title.pack", Layouts.of(recipe).toUpperCase(Locale.ROOT));
        QuantityFormat format = QuantityFormat.forPeople(locale);
        String load = bench.partsOf(PartKind.COIL).stream()
                .findFirst()
                .map(coil -> texts.say(
                        coil.keys().has("ohm") ? "title.ohm" : "title.wound",
                        format.print(coil.keys().number("ohm", 0), Unit.OHM),
                        recipe.coils().size()))
                .orElse("");
        if (recipe.single().containsKey(PartKind.BOARD)) {
            return texts.say("title.board", pack, board(bench, format));
        }
        if (!load.isEmpty()) {
            return texts.say("title.coil", pack, load);
        }
        return recipe.single().containsKey(PartKind.CHARGER) ? texts.say("title.charger", pack) : pack;
    }

    private static String board(Scenario bench, QuantityFormat format) {
        Part board = bench.partsOf(PartKind.BOARD).get(0);
        return board.keys().number("power_W").isPresent()
                ? format.print(board.keys().number("power_W"), Unit.WATT)
                : board.model().orElse("");
    }
}
