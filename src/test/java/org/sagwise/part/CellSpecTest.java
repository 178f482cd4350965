package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
        CellSpecBuilder incomplete = CellSpec.builder(Chemistry.INR, CellFormat.F18650)
                .internalOhm(0.02)
                .limitA(20);

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
        CellSpec guarded = cell().guard(Guard.usual(Chemistry.INR, 8, 0.02, 0.040))
                .pulse(new Pulse(25, 5))
                .build();

        CellSpec changed = guarded.toBuilder().limitA(15).build();

        assertEquals(15, changed.limitA());
        assertEquals(guarded, changed.toBuilder().limitA(20).build());
        assertEquals(0.040, changed.guardOhm());
    }

    @Test
    void build_otherFullVoltage_takesItsCurveAlong() {
        CellSpec cell = cell().fullV(4.35).build();

        assertEquals(4.35, cell.restCurve().voltsAt(1));
        assertEquals(3.2, cell.cutoffV());
    }

    /** A cell that is full at 1.4 V stops in proportion: 3.2 · 1.4/4.2 V. */
    @Test
    void build_muchLowerFullVoltage_stopsInProportion() {
        assertEquals(3.2 / 3, cell().fullV(1.4).build().cutoffV(), 1e-12);
        assertEquals(1.0, cell().fullV(1.4).cutoffV(1.0).build().cutoffV());
    }

    @Test
    void toBuilder_otherKind_takesItsVoltages() {
        CellSpec iron = cell().build().toBuilder().chemistry(Chemistry.IFR).build();

        assertEquals(3.65, iron.fullV());
        assertEquals(2.8, iron.cutoffV());
    }

    @Test
    void usualGuard_eachKind_opensBetweenLowestAndOvercharge() {
        for (Chemistry chemistry : Chemistry.values()) {
            Guard guard = Guard.usual(chemistry, 8, 0.02, 0.040);

            assertTrue(guard.overVoltageV() > chemistry.fullV(), chemistry.name());
            assertTrue(guard.overVoltageV() <= chemistry.distress().overchargeV());
            assertTrue(guard.underVoltageV() < chemistry.useCutoffV());
        }
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
