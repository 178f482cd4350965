package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.part.key.Keys;

class CellSpecTest {

    private static final Keys NEW = Keys.of("internal_mohm", 20, "capacity_mAh", 2500, "limit_A", 20);

    /** A cell of these keys and of a model. */
    private static CellSpec cell(Keys own, Keys model) {
        return CellSpec.of(PartKind.CELL.effective(own, model, Keys.NONE));
    }

    private static CellSpec cell(Keys own) {
        return cell(own, Keys.NONE);
    }

    @Test
    void of_threeNumbers_takesTheRestFromTheKind() {
        CellSpec cell = cell(NEW);

        assertEquals(4.20, cell.fullV());
        assertEquals(3.2, cell.cutoffV());
        assertEquals(1.25, cell.chargeLimitA());
        assertEquals(0, cell.guardOhm());
    }

    @Test
    void of_aNumberIsMissing_isRefused() {
        assertThrows(IllegalArgumentException.class, () -> cell(NEW.without("capacity_mAh")));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void of_absurdResistance_isRefused(double mohm) {
        assertThrows(IllegalArgumentException.class, () -> cell(NEW.with("internal_mohm", mohm)));
    }

    @Test
    void of_idealCell_isAllowed() {
        assertEquals(0, cell(NEW.with("internal_mohm", 0)).resistance().ohmAt(25, 0.5, 1));
    }

    @Test
    void of_oneNumberOfItsOwn_keepsTheOthersOfTheModel() {
        Keys model = NEW.with("pulse_A", 25)
                .with("pulse_s", 5)
                .with("guard", Keys.of("trip_A", 8, "trip_s", 0.02, "mohm", 40));

        CellSpec changed = cell(Keys.of("limit_A", 15), model);

        assertEquals(15, changed.limitA());
        assertEquals(Optional.of(new Pulse(25, 5)), changed.pulse());
        assertEquals(Optional.of(Guard.usual(Chemistry.INR, 8, 0.02, 0.040)), changed.guard());
        assertEquals(cell(Keys.NONE, model), cell(Keys.of("limit_A", 20), model));
    }

    @Test
    void of_guardWithLimitsOfItsOwn_opensThere() {
        Keys guard = Keys.of("trip_A", 8, "trip_s", 0, "mohm", 40, "under_V", 2.8, "over_V", 4.25);

        Guard opens = cell(NEW.with("guard", guard)).guard().orElseThrow();

        assertEquals(2.8, opens.underVoltageV());
        assertEquals(4.25, opens.overVoltageV());
    }

    @Test
    void of_otherFullVoltage_takesItsCurveAlong() {
        CellSpec cell = cell(NEW.with("full_V", 4.35));

        assertEquals(4.35, cell.restCurve().voltsAt(1));
        assertEquals(3.2, cell.cutoffV());
    }

    /** A cell that is full at 1.4 V stops in proportion: 3.2 · 1.4/4.2 V. */
    @Test
    void of_muchLowerFullVoltage_stopsInProportion() {
        assertEquals(3.2 / 3, cell(NEW.with("full_V", 1.4)).cutoffV(), 1e-12);
        assertEquals(1.0, cell(NEW.with("full_V", 1.4).with("cutoff_V", 1)).cutoffV());
    }

    /** What the model says of its chemistry's voltages does not hold for another chemistry. */
    @Test
    void of_otherChemistryThanTheModel_takesItsVoltages() {
        Keys model = NEW.with("full_V", 4.35).with("cutoff_V", 3);

        CellSpec iron = cell(Keys.of("chemistry", "IFR"), model);

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
        assertEquals(9.3, cell(NEW).energyWh(), 0.2);
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

    /**
     * Surface temperature while discharging: 75 °C on the data sheets of high-drain 18650 of 2.0 Ah
     * 22 A, 3.0 Ah 15 A and 3.0 Ah 20 A; 60 °C on that of a 2.6 Ah ICR.
     */
    @ParameterizedTest
    @CsvSource({"INR, 2.0, 22, 75", "INR, 3.0, 15, 75", "NCR, 3.0, 20, 75", "ICR, 2.6, 5.2, 60", "NCR, 3.4, 6.8, 60"})
    void distress_dataSheet_hasItsLimitOfTemperature(Chemistry kind, double ampereHours, double limitA, double limitC) {
        CellSpec spec = cell(NEW.with("chemistry", kind.name())
                .with("capacity_mAh", ampereHours * 1000)
                .with("limit_A", limitA));

        assertEquals(limitC, spec.distress().dischargeLimitC());
    }
}
