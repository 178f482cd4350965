package org.sagwise.scenario.edit;

import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;

/**
 * Holds the button or lets it go.
 *
 * @param held whether it is held
 */
public record PressButton(boolean held) implements Edit {

    @Override
    public Scenario apply(Scenario before) {
        return before.with(Press.of(held));
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of(held ? "button.held" : "button.released");
    }
}
