package org.sagwise.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.cli.TextTable.Side;
import org.sagwise.part.Card;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Measure;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.text.Texts;

/** The catalogue for people: a list of everything, or the card of one entry. */
final class PartsText {

    private static final Digits DIGITS = Digits.atMostSignificant(4);

    private final CallContext call;
    private final Texts texts;
    private final QuantityFormat format;

    PartsText(CallContext call) {
        this.call = call;
        this.texts = call.texts();
        this.format = call.format();
    }

    void list(List<CatalogueFamily> families) {
        for (CatalogueFamily family : families) {
            call.result(texts.say(family.key()));
            TextTable table = new TextTable(Side.LEFT, Side.LEFT);
            for (CatalogueEntry entry : family.entries()) {
                table.row("  " + entry.id(), call.printable(entry.card().title().in(call.locale())));
            }
            table.lines().forEach(call::result);
            call.result("");
        }
        call.result(texts.say("parts.more"));
    }

    /** A card: what it is, and each number with its source. */
    void card(CatalogueEntry entry) {
        Card card = entry.card();
        call.result(card.id() + ": " + card.title().in(call.locale()));
        Paragraph.lines(card.about().in(call.locale()), "").forEach(call::result);
        call.result("");
        TextTable table = new TextTable(Side.LEFT, Side.LEFT);
        rows(table, "", PartNumbers.of(entry));
        table.lines().forEach(call::result);
        sources(card);
    }

    private void rows(TextTable table, String group, Map<?, ?> numbers) {
        numbers.forEach((key, value) -> {
            if (value instanceof Map<?, ?> inner) {
                rows(table, key + ".", inner);
            } else {
                String shown = shown((String) key, value);
                table.row(label(group + key), call.printable(shown));
            }
        });
    }

    /** Each source once, with the numbers that come from it. */
    private void sources(Card card) {
        if (card.sources().isEmpty()) {
            return;
        }
        Map<String, List<String>> numbersBySource = new LinkedHashMap<>();
        card.sources()
                .forEach((key, source) -> numbersBySource
                        .computeIfAbsent(source.in(call.locale()), it -> new ArrayList<>())
                        .add(label(key)));
        call.result("");
        call.result(texts.say("parts.sources"));
        numbersBySource.forEach((source, numbers) -> Paragraph.lines(String.join(", ", numbers) + ": " + source, "  ")
                .forEach(call::result));
    }

    private String label(String key) {
        return call.printable(texts.has("part." + key) ? texts.say("part." + key) : key);
    }

    private String shown(String key, Object value) {
        if (Boolean.TRUE.equals(value)) {
            return texts.say("part.yes");
        }
        if (!(value instanceof Double number)) {
            return String.valueOf(value);
        }
        Optional<Measure> measure = Measure.ofKey(key);
        if (measure.isEmpty()) {
            return format.number(number, DIGITS) + unit(key);
        }
        double inUnit = measure.get().scale().toUnit(BigDecimal.valueOf(number));
        return format.print(inUnit, measure.get().scale(), DIGITS);
    }

    /** Units that no other room needs. */
    private static String unit(String key) {
        return switch (key) {
            case "resistivity_uohm_m", "resistivity_spread_uohm_m" -> " µΩ·m";
            case "density_kg_m3" -> " kg/m³";
            case "specific_heat_J_kgK" -> " J/(kg·K)";
            default -> "";
        };
    }
}
