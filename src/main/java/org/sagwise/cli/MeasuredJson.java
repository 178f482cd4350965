package org.sagwise.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import org.sagwise.file.ShareText;
import org.sagwise.plan.Estimate;
import org.sagwise.plan.Measured;

/** What follows from readings, as JSON; uncertainties are standard uncertainties. */
final class MeasuredJson {

    private MeasuredJson() {}

    static void write(CallContext call, MeasuredReport report) {
        JsonWriter.write(call.out(), call.signs(), json -> json.object(() -> keys(json, report)));
    }

    /** Digits beyond what any meter shows: the rest is noise of binary fractions. */
    private static final MathContext DIGITS = new MathContext(12);

    private static double rounded(double number) {
        return Double.isFinite(number)
                ? BigDecimal.valueOf(number).round(DIGITS).doubleValue()
                : number;
    }

    private static void keys(JsonWriter json, MeasuredReport report) {
        Measured measured = report.measured();
        json.number("rest_V", measured.check().restV());
        json.number("cell_V", measured.check().cellV());
        json.number("coil_V", measured.check().coilV());
        json.number("coil_ohm", measured.check().coilOhm());
        json.number("volts_step_V", rounded(measured.check().voltsStep()));
        json.number("ohm_step_ohm", rounded(measured.check().ohmStep()));
        json.number("sag_V", rounded(measured.sagV()));
        json.number("drop_V", rounded(measured.dropV()));
        json.number("power_W", rounded(measured.powerW()));
        estimate(json, "current", "A", measured.currentA());
        estimate(json, "internal", "ohm", measured.internalOhm());
        estimate(json, "path", "ohm", measured.pathOhm());
        json.text("advice", Words.of(measured.advice()));
        json.text("share_text", ShareText.of(report.scenario()).orElse(""));
    }

    private static void estimate(JsonWriter json, String name, String unit, Estimate estimate) {
        json.number(name + "_" + unit, rounded(estimate.value()));
        json.number(name + "_standard_uncertainty_" + unit, rounded(estimate.standard()));
    }
}
