package org.sagwise.cli;

import org.sagwise.assessment.Assessment;
import org.sagwise.report.health.Health;

/** Everything about a scenario at one instant as JSON, for other programs. */
final class AssessmentJson {

    private AssessmentJson() {}

    static void write(CallContext call, Assessment assessment) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> {
                    ReadingsJson readings = new ReadingsJson(json);
                    readings.keys(assessment.readings());
                    new CautionsJson(json, call, assessment.scenario()).list(assessment.cautions());
                    readings.ledger(assessment.ledger());
                    json.objects("health", Health.of(assessment.bench()), health -> health(json, health));
                }));
    }

    private static void health(JsonWriter json, Health health) {
        json.text("part", health.part());
        json.numbers("links", health.links());
        json.number("ohm", health.ohm());
        json.number("usual_from_ohm", health.usual().from());
        json.number("usual_to_ohm", health.usual().to());
        json.text("verdict", Words.of(health.verdict()));
        json.text("origin", Words.of(health.origin()));
    }
}
