package org.sagwise.cli;

import java.util.List;
import org.sagwise.hazard.Caution;
import org.sagwise.hazard.Hazards;
import org.sagwise.scenario.Scenario;

/** Cautions as JSON. */
final class CautionsJson {

    private final JsonWriter json;
    private final CautionWords words;

    /**
     * @param scenario what the cautions are about, for names and places
     */
    CautionsJson(JsonWriter json, CallContext call, Scenario scenario) {
        this.json = json;
        this.words = new CautionWords(call, scenario);
    }

    /** Writes them as the key {@code cautions} of the object that is open. */
    void list(List<Caution> cautions) {
        json.objects("cautions", cautions, this::caution);
    }

    private void caution(Caution caution) {
        json.text("id", caution.id());
        json.text("signal", caution.signal().name());
        json.texts("parts", caution.parts());
        json.numbers("links", caution.links());
        json.text("when", Words.of(caution.when()));
        json.number("measured", caution.measured());
        json.number("limit", caution.limit());
        json.text("unit", caution.unit());
        json.text("basis", Hazards.basis(caution).word());
        json.text("title", words.title(caution));
        json.text("text", words.text(caution));
        json.text("advice", words.advice(caution));
    }
}
