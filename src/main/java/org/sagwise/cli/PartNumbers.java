package org.sagwise.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.sagwise.part.Alloy;
import org.sagwise.part.BoardSpec;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.CellSpec;
import org.sagwise.part.ChargerSpec;
import org.sagwise.part.Chemistry;
import org.sagwise.part.ChemistryCard;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.ContactSpec;
import org.sagwise.part.FuseSpec;
import org.sagwise.part.Guard;
import org.sagwise.part.JumperSpec;
import org.sagwise.part.SwitchSpec;

/**
 * The numbers of a catalogue entry under the keys that a scenario file would use for them: {@link
 * Double} in the unit that the key's ending names, {@link String}, or a {@link Map} of such.
 */
final class PartNumbers {

    private static final MathContext DIGITS = new MathContext(12);

    private final Map<String, Object> numbers = new LinkedHashMap<>();

    private PartNumbers() {}

    static Map<String, Object> of(CatalogueEntry entry) {
        PartNumbers collected = new PartNumbers();
        collected.collect(entry);
        return collected.numbers;
    }

    private void collect(CatalogueEntry entry) {
        if (entry instanceof CellSpec cell) {
            cell(cell);
        } else if (entry instanceof ChemistryCard card) {
            chemistry(card.chemistry());
        } else if (entry instanceof Alloy alloy) {
            alloy(alloy);
        } else if (entry instanceof CoilSpec coil) {
            coil(coil);
        } else if (entry instanceof ContactSpec contact) {
            put("contact_mohm", milli(contact.ohm()));
            put("from_mohm", milli(contact.spread().from()));
            put("to_mohm", milli(contact.spread().to()));
        } else if (entry instanceof JumperSpec jumper) {
            put("diameter_mm", jumper.wire().size().diameterMm());
            put("length_mm", milli(jumper.wire().lengthM()));
            put("contacts_mohm", milli(jumper.contactsOhm()));
        } else if (entry instanceof SwitchSpec button) {
            numbers.put("type", button.action().name().toLowerCase(Locale.ROOT));
            put("closed_mohm", milli(button.closedOhm()));
        } else {
            powered(entry);
        }
    }

    private void powered(CatalogueEntry entry) {
        if (entry instanceof FuseSpec fuse) {
            put("rating_A", fuse.ratingA());
            put("mohm", milli(fuse.ohm()));
            put("i2t_A2s", fuse.meltingA2s());
        } else if (entry instanceof BoardSpec board) {
            put("power_W", board.powerW());
            put("efficiency", board.efficiency());
            put("cutoff_V", board.cutoffV());
            put("max_input_A", board.maxInputA());
            put("out_min_V", board.outMinV());
            put("out_max_V", board.outMaxV());
        } else if (entry instanceof ChargerSpec charger) {
            put("current_A", charger.currentA());
            put("limit_V", charger.limitV());
            put("taper_A", charger.taperA());
        } else {
            throw new IllegalArgumentException("no numbers known for " + entry.getClass());
        }
    }

    private void cell(CellSpec cell) {
        numbers.put("chemistry", cell.chemistry().name());
        numbers.put("format", cell.format().trade());
        put("internal_mohm", milli(cell.internalOhm()));
        put("capacity_mAh", milli(cell.capacityAh()));
        put("limit_A", cell.limitA());
        cell.pulse().ifPresent(pulse -> {
            put("pulse_A", pulse.currentA());
            put("pulse_s", pulse.durationS());
        });
        put("charge_limit_A", cell.chargeLimitA());
        put("cutoff_V", cell.cutoffV());
        put("full_V", cell.fullV());
        cell.guard().ifPresent(guard -> numbers.put("guard", guard(guard)));
        cell.claim().ifPresent(claim -> {
            claim.limitA().ifPresent(amps -> put("claimed_A", amps));
            claim.capacityAh().ifPresent(ah -> put("claimed_mAh", milli(ah)));
        });
    }

    private static Map<String, Object> guard(Guard guard) {
        PartNumbers inner = new PartNumbers();
        inner.put("trip_A", guard.tripA());
        inner.put("trip_s", guard.tripS());
        inner.put("mohm", milli(guard.ohm()));
        inner.put("under_V", guard.underVoltageV());
        inner.put("over_V", guard.overVoltageV());
        return inner.numbers;
    }

    private void chemistry(Chemistry chemistry) {
        put("full_V", chemistry.fullV());
        put("nominal_V", chemistry.nominalV());
        put("cutoff_V", chemistry.useCutoffV());
        put("lowest_V", chemistry.lowestV());
    }

    private void alloy(Alloy alloy) {
        put("resistivity_uohm_m", milli(milli(alloy.resistivityOhmM(20))));
        put("density_kg_m3", alloy.densityKgPerM3());
        put("specific_heat_J_kgK", alloy.specificHeatJPerKgK());
        put("melting_C", alloy.meltingC());
        put("emissivity", alloy.emissivity());
    }

    private void coil(CoilSpec coil) {
        put("ohm", coil.ohm());
        coil.limitW().ifPresent(watts -> put("limit_W", watts));
        coil.winding().ifPresent(winding -> numbers.put("wire", winding(winding)));
    }

    private static Map<String, Object> winding(CoilWinding winding) {
        PartNumbers inner = new PartNumbers();
        inner.numbers.put("alloy", winding.wire().alloy().id());
        inner.put("diameter_mm", milli(winding.wire().diameterM()));
        inner.put("wraps", winding.wraps());
        inner.put("inner_mm", milli(winding.innerDiameterM()));
        inner.put("legs_mm", milli(winding.legsM()));
        inner.put("strands", winding.wire().strands());
        return inner.numbers;
    }

    private void put(String key, double value) {
        numbers.put(key, value);
    }

    /** Thousandths, without the last digits that binary numbers leave behind. */
    private static double milli(double value) {
        return BigDecimal.valueOf(value).scaleByPowerOfTen(3).round(DIGITS).doubleValue();
    }
}
