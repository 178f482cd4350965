package org.sagwise.cli;

import org.sagwise.file.ShareText;
import org.sagwise.plan.pack.PackChoice;
import org.sagwise.plan.pack.PackChoice.Course;
import org.sagwise.plan.pack.PackMoment;
import org.sagwise.plan.pack.PackPlan;
import org.sagwise.plan.pack.PackWish;

/** What came of a wish, as JSON. */
final class PlanJson {

    private PlanJson() {}

    static void write(CallContext call, PackPlan plan) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> {
                    wish(json, plan.wish());
                    json.flag("complete", plan.isComplete());
                    json.objects("choices", plan.choices(), choice -> choice(call, json, choice));
                    json.objects("refused", plan.refused(), it -> {
                        json.text("cell", it.cell());
                        json.whole("in_a_row", it.rows());
                        json.whole("side_by_side", it.side());
                        json.text("why", Words.of(it.why()));
                        json.number("most", it.number());
                    });
                }));
    }

    private static void wish(JsonWriter json, PackWish wish) {
        json.object("wish", () -> {
            json.number("power_W", wish.watts().orElse(Double.NaN));
            json.number("coil_ohm", wish.coilOhm().orElse(Double.NaN));
            json.flag("regulated", wish.regulated());
            json.number("lasts_s", wish.lastsS().orElse(Double.NaN));
            json.whole("most_cells", wish.mostCells());
        });
    }

    private static void choice(CallContext call, JsonWriter json, PackChoice choice) {
        json.text("verdict", Words.of(choice.verdict()));
        json.text("cell", choice.cell());
        json.text("layout", choice.layout());
        json.whole("in_a_row", choice.rows());
        json.whole("side_by_side", choice.side());
        json.number("coil_ohm", choice.coilOhm());
        json.whole("wire_awg", choice.awg());
        json.number("fuse_A", choice.fuseA().orElse(Double.NaN));
        json.number("share_of_limit", choice.share());
        moment(json, "full", choice.full());
        moment(json, "half", choice.half());
        if (choice.course().isPresent()) {
            json.object("run", () -> course(json, choice.course().get()));
        } else {
            json.nothing("run");
        }
        json.objects("cautions", choice.cautions(), caution -> {
            json.text("id", caution.id());
            json.text("signal", caution.signal().name());
        });
        json.text("share_text", ShareText.of(choice.bench()).orElse(""));
    }

    private static void course(JsonWriter json, Course course) {
        json.text("ended_by", course.end().word());
        json.text("first_part", course.first().map(event -> event.part()).orElse(""));
        json.number("elapsed_s", course.timeS());
        json.number("fired_s", course.firedS());
        json.whole("presses", course.presses());
        json.number("peak_share_of_limit", course.peakShare());
        json.number("peak_temperature_C", course.peakC());
        moment(json, "last", course.last());
    }

    private static void moment(JsonWriter json, String name, PackMoment moment) {
        json.object(name, () -> {
            json.number("power_W", moment.coilW());
            json.number("pack_A", moment.packA());
            json.number("cell_A", moment.cellA());
            json.number("share_of_limit", moment.share());
            json.number("sag_V", moment.sagV());
            json.number("cell_heat_W", moment.cellHeatW());
            json.number("joint_heat_W", moment.jointHeatW());
        });
    }
}
