package org.sagwise.cli;

import java.util.List;
import java.util.Map;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.text.LocalText;

/** The catalogue as JSON: a list for each family, always all of them. */
final class PartsJson {

    private final CallContext call;
    private final JsonWriter json;

    private PartsJson(CallContext call, JsonWriter json) {
        this.call = call;
        this.json = json;
    }

    static void write(CallContext call, List<CatalogueFamily> families) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> families.forEach(new PartsJson(call, json)::family)));
    }

    private void family(CatalogueFamily family) {
        json.objects(family.word(), family.entries(), this::entry);
    }

    private void entry(CatalogueEntry entry) {
        json.text("id", entry.id());
        json.text("title", in(entry.card().title()));
        json.text("about", in(entry.card().about()));
        PartNumbers.of(entry).forEach(this::number);
        json.object("sources", () -> entry.card().sources().forEach((key, source) -> json.text(key, in(source))));
    }

    private void number(String key, Object value) {
        if (value instanceof Double number) {
            json.number(key, number);
        } else if (value instanceof Boolean flag) {
            json.flag(key, flag);
        } else if (value instanceof Map<?, ?> group) {
            json.object(key, () -> group.forEach((name, it) -> number((String) name, it)));
        } else {
            json.text(key, String.valueOf(value));
        }
    }

    private String in(LocalText text) {
        return text.in(call.locale());
    }
}
