package org.sagwise.cli;

import java.util.List;
import org.sagwise.scenario.Scenario;

/** Checked files as JSON: one object a file, with cautions and problems. */
final class CheckJson {

    private final CallContext call;
    private final JsonWriter json;

    private CheckJson(CallContext call, JsonWriter json) {
        this.call = call;
        this.json = json;
    }

    static void write(CallContext call, List<CheckedFile> checked) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> json.objects("files", checked, new CheckJson(call, json)::file)));
    }

    private void file(CheckedFile checked) {
        json.text("file", checked.given().name());
        json.text("title", checked.given().scenario().map(Scenario::title).orElse(""));
        new CautionsJson(json, call, checked.given().scenario().orElse(Scenario.empty())).list(checked.cautions());
        json.objects("cures", checked.cures(), offer -> {
            json.text("caution", offer.caution().id());
            json.text("cure", offer.fix().kind().key());
            json.text("text", offer.fix().name(call.locale()));
        });
        json.objects("problems", checked.given().problems(), problem -> {
            json.text("place", problem.place());
            json.text("text", problem.text());
        });
    }
}
