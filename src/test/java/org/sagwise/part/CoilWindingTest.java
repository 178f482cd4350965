package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.sagwise.text.LocalText;

class CoilWindingTest {

    private static final Alloy ALLOY = new Alloy(
            new Card("a", LocalText.same("a"), LocalText.same("a"), Map.of()),
            1.45e-6,
            OptionalDouble.of(0.07e-6),
            TemperatureFactor.constant(),
            7100,
            480,
            1510,
            0.7);

    /** 0.5 mm wire, 6 wraps on 3 mm, 20 mm of legs, worked out by hand below. */
    private static final CoilWinding COIL = new CoilWinding(new CoilWire(ALLOY, 0.5e-3, 1), 6, 3e-3, 20e-3);

    /**
     * By hand: round π·3.5 mm = 10.9956 mm; one wrap √(10.9956² + 0.5²) = 11.0069 mm; six 66.0415
     * mm; with legs 86.0416 mm. Section π/4·0.25 = 0.196350 mm². R = 1.45·0.0860416/0.196350 =
     * 0.63540 Ω.
     */
    @Test
    void ohm_handWorkedCoil_agrees() {
        assertEquals(86.0416e-3, COIL.lengthM(), 1e-7);
        assertEquals(0.63540, COIL.ohm(), 1e-5);
    }

    /** By hand: 0.196350 mm² · 86.0416 mm · 7.1 mg/mm³ = 119.95 mg; π·0.5·86.0416 = 135.154 mm². */
    @Test
    void massAndSurface_handWorkedCoil_agree() {
        assertEquals(119.95e-6, COIL.massKg(), 0.01e-6);
        assertEquals(135.154e-6, COIL.surfaceM2(), 1e-9);
        assertEquals(20_000 / 135.154, COIL.surfaceLoadMwPerMm2(20), 1e-3);
        assertEquals(3.0, COIL.widthMm(), 1e-12);
    }

    /** FeCrAl 21-6-Nb, 0.40 mm: 1.45/(π/4·0.16) = 11.54 Ω/m, as wire makers print it (11.5). */
    @Test
    void ohmPerM_commonHeatingWire_isTheClosedForm() {
        assertEquals(11.54, new CoilWire(ALLOY, 0.4e-3, 1).ohmPerM(), 0.01);
    }

    @Property
    void wrapsFor_ohmOfACoil_areItsWraps(
            @ForAll @DoubleRange(min = 0.5, max = 40) @Scale(10) double wraps,
            @ForAll @DoubleRange(min = 0.1, max = 1.5) @Scale(10) double diameterMm,
            @ForAll @DoubleRange(min = 1, max = 8) @Scale(10) double innerMm,
            @ForAll @DoubleRange(min = 0, max = 40) @Scale(10) double legsMm,
            @ForAll @IntRange(min = 1, max = 4) int strands) {
        CoilWire wire = new CoilWire(ALLOY, diameterMm / 1000, strands);
        CoilWinding coil = new CoilWinding(wire, wraps, innerMm / 1000, legsMm / 1000);

        OptionalDouble found = CoilWinding.wrapsFor(wire, innerMm / 1000, legsMm / 1000, coil.ohm());

        assertEquals(wraps, found.getAsDouble(), 1e-9 * (wraps + 1));
    }

    @Test
    void wrapsFor_lessThanTheLegsHave_isEmpty() {
        CoilWire wire = new CoilWire(ALLOY, 0.2e-3, 1);

        assertEquals(OptionalDouble.empty(), CoilWinding.wrapsFor(wire, 3e-3, 20e-3, 0.5));
    }

    @Property
    void ohm_twoStrands_isLittleMoreThanHalf(@ForAll @DoubleRange(min = 1, max = 20) @Scale(10) double wraps) {
        double single = new CoilWinding(new CoilWire(ALLOY, 0.4e-3, 1), wraps, 3e-3, 0).ohm();
        double twin = new CoilWinding(new CoilWire(ALLOY, 0.4e-3, 2), wraps, 3e-3, 0).ohm();

        assertTrue(twin > 0.5 * single && twin < 0.503 * single);
    }

    /** At 1000 °C a black square metre gives off 148.98 kW: σ·1273.15⁴, worked out by hand. */
    @Test
    void lossW_radiationAlone_isStefanBoltzmanns() {
        CoilThermal black = new CoilThermal(1, 1, List.of());

        assertEquals(148_981, black.lossW(1000, -273.15), 10);
        assertEquals(0, black.lossW(20, 20));
    }

    @Test
    void rateKPerS_coldCoil_isPowerOverHeatCapacity() {
        CoilThermal thermal = COIL.thermal();

        assertEquals(119.95e-6 * 480, thermal.heatCapacityJPerK(), 1e-5);
        assertEquals(20 / thermal.heatCapacityJPerK(), thermal.rateKPerS(20, 20, 20), 1e-9);
    }

    @Test
    void winding_absurdNumbers_areRefused() {
        CoilWire wire = new CoilWire(ALLOY, 0.4e-3, 1);

        assertThrows(IllegalArgumentException.class, () -> new CoilWinding(wire, 0, 3e-3, 0));
        assertThrows(IllegalArgumentException.class, () -> new CoilWinding(wire, 5, 3e-3, -1));
        assertThrows(IllegalArgumentException.class, () -> new CoilWire(ALLOY, 0.4e-3, 0));
    }
}
