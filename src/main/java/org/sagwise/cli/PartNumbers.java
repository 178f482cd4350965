package org.sagwise.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.Map;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.Alloy;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.Chemistry;
import org.sagwise.part.ChemistryCard;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.CoilWinding;
import org.sagwise.part.ContactSpec;
import org.sagwise.part.JumperSpec;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;

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
        if (entry instanceof PartModel model) {
            model(model);
        } else if (entry instanceof ChemistryCard card) {
            chemistry(card.chemistry());
        } else if (entry instanceof Alloy alloy) {
            alloy(alloy);
        } else if (entry instanceof ContactSpec contact) {
            put("contact_mohm", milli(contact.ohm()));
            put("from_mohm", milli(contact.spread().from()));
            put("to_mohm", milli(contact.spread().to()));
        } else if (entry instanceof JumperSpec jumper) {
            put("diameter_mm", jumper.wire().size().diameterMm());
            put("length_mm", milli(jumper.wire().lengthM()));
            put("contacts_mohm", milli(jumper.contactsOhm()));
        } else {
            throw new IllegalArgumentException("no numbers known for " + entry.getClass());
        }
    }

    /** What holds for the make of a part; of a wound coil, what its wire comes to as well. */
    private void model(PartModel model) {
        Object spec = model.kind()
                .descriptor()
                .spec()
                .map(maker -> maker.make(model.values(), CatalogueLoader.builtIn()))
                .orElse(null);
        if (spec instanceof CoilSpec coil) {
            coil(coil);
            return;
        }
        Map<String, Object> values = model.values().all().values();
        model.kind().keys().stream()
                .filter(key -> key.tells() == KeySpec.Tells.MAKE && values.containsKey(key.name()))
                .forEach(key -> numbers.put(key.name(), plain(values.get(key.name()))));
    }

    private static Object plain(Object value) {
        return value instanceof Keys group ? group.values() : value;
    }

    private void chemistry(Chemistry chemistry) {
        put("full_V", chemistry.fullV());
        put("nominal_V", chemistry.nominalV());
        put("cutoff_V", chemistry.useCutoffV());
        put("lowest_V", chemistry.lowestV());
    }

    private void alloy(Alloy alloy) {
        put("resistivity_uohm_m", milli(milli(alloy.resistivityOhmM(20))));
        alloy.spreadOhmM().ifPresent(spread -> put("resistivity_spread_uohm_m", milli(milli(spread))));
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
