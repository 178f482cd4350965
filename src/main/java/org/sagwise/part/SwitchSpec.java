package org.sagwise.part;

/**
 * A kind of switch.
 *
 * @param card what the catalogue says about it
 * @param action how it closes
 * @param closedOhm resistance when closed (Ω), 0 or more
 */
public record SwitchSpec(Card card, Action action, double closedOhm) implements CatalogueEntry {

    /** How a switch closes. */
    public enum Action {
        /** A contact that a finger presses together. */
        BUTTON,
        /** A transistor that a small button controls. */
        MOSFET
    }

    public SwitchSpec {
        Require.notNegative(closedOhm, "closedOhm");
    }
}
