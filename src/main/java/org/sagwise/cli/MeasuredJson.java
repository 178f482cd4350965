package org.sagwise.cli;

import org.sagwise.file.ShareText;
import org.sagwise.plan.Estimate;
import org.sagwise.plan.Measured;

/** What follows from readings, as JSON; uncertainties are standard uncertainties. */
final class MeasuredJson {

    private MeasuredJson() {}

    static void write(CallContext call, MeasuredReport report) {
        JsonWriter.write(call.out(), call.signs(), json -> json.object(() -> keys(json, report)));
    }

    private static void keys(JsonWriter json, MeasuredReport report) {
        Measured measured = report.measured();
        json.number("rest_V", measured.check().restV());
        json.number("cell_V", measured.check().cellV());
        json.number("coil_V", measured.check().coilV());
        json.number("coil_ohm", measured.check().coilOhm());
        json.number("volts_step_V", measured.check().voltsStep());
        json.number("ohm_step_ohm", measured.check().ohmStep());
        json.number("sag_V", measured.sagV());
        json.number("drop_V", measured.dropV());
        json.number("power_W", measured.powerW());
        estimate(json, "current", "A", measured.currentA());
        estimate(json, "internal", "ohm", measured.internalOhm());
        estimate(json, "path", "ohm", measured.pathOhm());
        json.text("advice", Words.of(measured.advice()));
        json.text("share_text", ShareText.of(report.scenario()).orElse(""));
    }

    private static void estimate(JsonWriter json, String name, String unit, Estimate estimate) {
        json.number(name + "_" + unit, estimate.value());
        json.number(name + "_standard_uncertainty_" + unit, estimate.standard());
    }
}
