package org.sagwise.cli;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.sagwise.part.CoilWinding;
import org.sagwise.plan.WholeWraps;
import org.sagwise.plan.WoundCoil;

/** A wound coil as JSON. */
final class WindJson {

    private static final double MM_PER_M = 1e3;
    private static final double MG_PER_KG = 1e6;

    private WindJson() {}

    static void write(
            CallContext call, WoundCoil coil, OptionalDouble wantedOhm, Optional<WholeWraps.Answer.Found> found) {
        JsonWriter.write(
                call.out(),
                call.signs(),
                json -> json.object(() -> {
                    json.number("wanted_ohm", wantedOhm.orElse(Double.NaN));
                    json.number(
                            "exact_wraps",
                            found.map(WholeWraps.Answer.Found::exactly).orElse(Double.NaN));
                    keys(json, coil);
                    json.objects(
                            "beside", found.map(WholeWraps.Answer.Found::beside).orElse(List.of()), other -> {
                                json.number("wraps", other.wraps());
                                json.number("ohm", other.ohm());
                            });
                }));
    }

    private static void keys(JsonWriter json, WoundCoil coil) {
        CoilWinding winding = coil.winding();
        json.text("alloy", winding.wire().alloy().id());
        json.number("diameter_mm", winding.wire().diameterM() * MM_PER_M);
        json.whole("strands", winding.wire().strands());
        json.number("inner_mm", winding.innerDiameterM() * MM_PER_M);
        json.number("legs_mm", winding.legsM() * MM_PER_M);
        json.number("wraps", winding.wraps());
        json.number("wire_length_mm", winding.lengthM() * MM_PER_M);
        json.number("width_mm", winding.widthMm());
        json.number("mass_mg", winding.massKg() * MG_PER_KG);
        json.number("ohm", coil.ohm());
        json.number("least_ohm", coil.ohmSpread().from());
        json.number("most_ohm", coil.ohmSpread().to());
        json.number("glowing_ohm", coil.glowingOhm());
        json.number("volts_V", coil.volts());
        json.number("power_W", coil.powerW());
        json.number("glowing_power_W", coil.glowingW());
        json.number("surface_load_mW_per_mm2", coil.surfaceLoadMwPerMm2());
        json.number("glows_after_s", coil.glowsAfterS());
        json.number("steady_C", coil.steadyC());
        json.flag("melts", coil.melts());
    }
}
