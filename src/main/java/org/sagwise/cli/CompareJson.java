package org.sagwise.cli;

import java.util.List;
import org.sagwise.hazard.Caution;
import org.sagwise.report.compare.BuildDifference;
import org.sagwise.report.compare.Comparison;
import org.sagwise.report.compare.Outcome;
import org.sagwise.run.RunEnd;
import org.sagwise.scenario.Link;

/** A comparison as JSON. */
final class CompareJson {

    private final JsonWriter json;

    private CompareJson(JsonWriter json) {
        this.json = json;
    }

    static void write(CallContext call, Comparison comparison) {
        JsonWriter.write(call.out(), call.signs(), json -> json.object(() -> new CompareJson(json).keys(comparison)));
    }

    private void keys(Comparison comparison) {
        json.text("first", comparison.first().scenario().title());
        json.text("second", comparison.second().scenario().title());
        json.flag("differs", comparison.differs());
        json.objects("build", comparison.build(), this::build);
        json.objects("outcome", comparison.outcome().rows(), this::row);
        cautions("cautions_only_first", comparison.outcome().gone());
        cautions("cautions_only_second", comparison.outcome().come());
        json.objects(
                "courses",
                List.of(comparison.outcome().was(), comparison.outcome().is()),
                this::course);
    }

    private void build(BuildDifference difference) {
        if (difference instanceof BuildDifference.PartOnly only) {
            keys("part-only", "", "");
            json.text("side", Words.of(only.side()));
            json.text("part", only.part().id());
        } else if (difference instanceof BuildDifference.Turned turned) {
            keys("turned", turned.first().id(), turned.second().id());
        } else if (difference instanceof BuildDifference.KeyChanged changed) {
            keys("key", changed.first().id(), changed.second().id());
            json.text("key", changed.key());
            json.text("was", changed.was());
            json.text("is", changed.is());
        } else if (difference instanceof BuildDifference.JointOnly only) {
            keys("joint-only", "", "");
            json.text("side", Words.of(only.side()));
            link("joint", only.link());
        } else if (difference instanceof BuildDifference.JointChanged changed) {
            keys("joint", "", "");
            link("first_joint", changed.first());
            link("second_joint", changed.second());
        } else if (difference instanceof BuildDifference.Ambient ambient) {
            keys("ambient", "", "");
            json.number("was_C", ambient.wasC());
            json.number("is_C", ambient.isC());
        }
    }

    private void keys(String kind, String first, String second) {
        json.text("kind", kind);
        if (!first.isEmpty()) {
            json.text("first", first);
            json.text("second", second);
        }
    }

    private void link(String name, Link link) {
        json.texts(name, List.of(link.from().toString(), link.to().toString()));
    }

    private void course(Outcome.Course course) {
        json.number("run_time_s", course.timeS());
        json.text("ended_by", course.end().map(RunEnd::word).orElse(""));
        json.texts("symptoms", course.symptoms().stream().map(Words::of).toList());
    }

    private void row(Outcome.Row row) {
        json.text("quantity", Words.of(row.quantity()));
        json.text("unit", row.quantity().unit());
        json.text("first", row.first());
        json.text("second", row.second());
        json.number("was", row.was());
        json.number("is", row.is());
        json.flag("alike", row.isAlike());
    }

    private void cautions(String name, List<Caution> cautions) {
        json.objects(name, cautions, caution -> {
            json.text("id", caution.id());
            json.text("signal", caution.signal().name());
        });
    }
}
