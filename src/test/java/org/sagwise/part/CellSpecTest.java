package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CellSpecTest {

    private static CellSpecBuilder cell() {
        return CellSpec.builder(Chemistry.INR, CellFormat.F18650)
                .internalOhm(0.020)
                .capacityAh(2.5)
                .limitA(20);
    }

    @Test
    void build_threeNumbers_takesTheRestFromTheKind() {
        CellSpec cell = cell().build();

        assertEquals(4.20, cell.fullV());
        assertEquals(3.2, cell.cutoffV());
        assertEquals(1.25, cell.chargeLimitA());
        assertEquals(0, cell.guardOhm());
    }

    @Test
    void build_aNumberIsMissing_isRefused() {
        CellSpecBuilder incomplete =
                CellSpec.builder(Chemistry.INR, CellFormat.F18650).internalOhm(0.02).limitA(20);

        assertThrows(IllegalArgumentException.class, incomplete::build);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, Double.NaN, Double.POSITIVE_INFINITY})
    void build_absurdResistance_isRefused(double ohm) {
        CellSpecBuilder absurd = cell().internalOhm(ohm);

        assertThrows(IllegalArgumentException.class, absurd::build);
    }

    @Test
    void build_idealCell_isAllowed() {
        assertEquals(0, cell().internalOhm(0).build().resistance().ohmAt(25, 0.5, 1));
    }

    @Test
    void toBuilder_oneNumberChanged_keepsTheOthers() {
        CellSpec guarded =
                cell().guard(Guard.usual(8, 0.02, 0.040)).pulse(new Pulse(25, 5)).build();

        CellSpec changed = guarded.toBuilder().limitA(15).build();

        assertEquals(15, changed.limitA());
        assertEquals(guarded, changed.toBuilder().limitA(20).build());
        assertEquals(0.040, changed.guardOhm());
    }

    @Test
    void build_cutoffAboveFull_isRefused() {
        CellSpecBuilder absurd = cell().cutoffV(4.3);

        assertThrows(IllegalArgumentException.class, absurd::build);
    }

    /** Capacity times mean voltage: 2.5 Ah at 3.6–3.8 V is about 9.3 Wh. */
    @Test
    void energyWh_usualCell_isCapacityTimesMeanVoltage() {
        assertEquals(9.3, cell().build().energyWh(), 0.2);
    }

    /**
     * 3.0 Ah NMC 18650 discharged at 3.87 A in a chamber of 25 °C down to 2.5 V: 2.941 Ah and 10.47
     * Wh, a mean of 3.56 V (open data of the Battery Testing Consortium, Oxford Brookes University,
     * 2021–22). The sag of 3.87 A in some 30 mΩ, 0.12 V, brings it back to rest.
     */
    @Test
    void meanRestVoltage_publishedDischargePlusItsSag_agrees() {
        assertEquals(10.47 / 2.941 + 3.87 * 0.030, Chemistry.NCR.restCurve().meanV(), 0.06);
    }
}
