package org.sagwise.cli;

import java.util.List;
import org.sagwise.assessment.Assessment;
import org.sagwise.cli.TextTable.Side;
import org.sagwise.hazard.Caution;
import org.sagwise.report.health.HealthWords;
import org.sagwise.text.Texts;

/** Readings with their cautions in short, for people. */
final class AssessmentText {

    private final CallContext call;
    private final Texts texts;

    AssessmentText(CallContext call) {
        this.call = call;
        this.texts = call.texts();
    }

    void print(Assessment assessment) {
        ReadingsText.lines(call, assessment.scenario(), assessment.readings()).forEach(call::result);
        health(assessment);
        call.result("");
        cautions(assessment);
        call.result("");
        Paragraph.lines(texts.say("teaching"), "").forEach(call::result);
    }

    private void health(Assessment assessment) {
        HealthWords words = new HealthWords(assessment.bench(), call.locale(), call.signs());
        if (words.rows().isEmpty()) {
            return;
        }
        TextTable table = new TextTable(Side.LEFT, Side.RIGHT, Side.RIGHT, Side.LEFT);
        table.row(words.heads().stream().map(call::printable).toArray(String[]::new));
        words.rows().forEach(row -> table.row(row.stream().map(call::printable).toArray(String[]::new)));
        call.result("");
        call.result(Texts.in("health", call.locale()).say("title"));
        table.lines().forEach(call::result);
        words.marks().forEach(call::result);
    }

    private void cautions(Assessment assessment) {
        List<Caution> cautions = assessment.cautions();
        if (cautions.isEmpty()) {
            call.result(texts.say("cautions.none"));
            return;
        }
        CautionWords words = new CautionWords(call, assessment.scenario());
        call.result(texts.say("cautions.head"));
        cautions.forEach(caution -> words.head(caution).forEach(line -> call.result(caution.signal(), line)));
        call.result(texts.say("cautions.more"));
    }
}
