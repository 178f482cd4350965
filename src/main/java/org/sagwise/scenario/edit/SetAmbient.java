package org.sagwise.scenario.edit;

import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Sets how warm it is around the bench.
 *
 * @param ambientC temperature, °C, −60 to 150; kept within
 */
public record SetAmbient(double ambientC) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        double least = ScenarioKeys.AMBIENT.least();
        double most = ScenarioKeys.AMBIENT.most();
        return before.withAmbientC(Math.max(least, Math.min(most, ambientC)));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of("ambient");
    }
}
