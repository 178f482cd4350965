package org.sagwise.part;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class ChemistryTest {

    /**
     * Ends of charge and discharge. NMC: data sheet of a 2.5 Ah high-drain 18650; LFP: seen on a
     * data sheet of an iron phosphate cell.
     */
    @ParameterizedTest
    @CsvSource({"INR, 4.20, 2.5, 3.6", "IFR, 3.65, 2.5, 3.2"})
    void limits_kindsWithADataSheet_areThoseOfTheSheet(
            Chemistry chemistry, double fullV, double lowestV, double nominalV) {
        assertEquals(fullV, chemistry.fullV());
        assertEquals(lowestV, chemistry.lowestV());
        assertEquals(nominalV, chemistry.nominalV());
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void limits_everyKind_areInOrder(Chemistry chemistry) {
        assertTrue(chemistry.lowestV() < chemistry.useCutoffV());
        assertTrue(chemistry.useCutoffV() < chemistry.nominalV());
        assertTrue(chemistry.nominalV() < chemistry.fullV());
        assertTrue(chemistry.fullV() < chemistry.distress().overchargeV());
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void useCutoff_everyKind_leavesLittleCharge(Chemistry chemistry) {
        double left = chemistry.restCurve().chargeAt(chemistry.useCutoffV());

        assertTrue(left > 0 && left < 0.08, "left " + left);
    }

    @ParameterizedTest
    @EnumSource(Chemistry.class)
    void stages_everyKind_beginOneAfterTheOther(Chemistry chemistry) {
        Distress distress = chemistry.distress();
        double last = Double.NEGATIVE_INFINITY;
        for (DistressStage stage : DistressStage.values()) {
            OptionalDouble onset = distress.onsetC(stage);
            if (onset.isPresent()) {
                assertTrue(onset.getAsDouble() > last, stage.name());
                last = onset.getAsDouble();
            }
        }
    }

    @ParameterizedTest
    @CsvSource({
        "25, NONE",
        "60, NONE",
        "61, ABOVE_LIMIT",
        "80, LAYER_BREAKDOWN",
        "110, VENT",
        "169, VENT",
        "170, RUNAWAY"
    })
    void stageAt_temperature_isTheFurthestReached(double temperatureC, DistressStage stage) {
        assertEquals(stage, Chemistry.INR.distress().stageAt(temperatureC));
    }

    /**
     * Ranking: iron phosphate runs away later than nickel manganese cobalt (Zhong et al., Front.
     * Energy Res. 6:110, 2018: charged NMC is the least stable of NMC, LMO and LFP).
     */
    @Test
    void runaway_charged_nickelKindComesBeforeManganeseAndIron() {
        double nickel = Chemistry.INR.distress().runawayC().from();

        assertTrue(nickel < Chemistry.IMR.distress().runawayC().from());
        assertTrue(nickel < Chemistry.IFR.distress().runawayC().from());
    }
}
