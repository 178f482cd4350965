package org.sagwise.cli;

import org.sagwise.assessment.Assessment;

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
                }));
    }
}
