package org.sagwise.part;

/**
 * A ready-made jumper.
 *
 * @param card what the catalogue says about it
 * @param wire its wire
 * @param contactsOhm its contacts at both ends together (Ω), 0 or more
 */
public record JumperSpec(Card card, JumperWire wire, double contactsOhm) implements CatalogueEntry {

    public JumperSpec {
        Require.notNegative(contactsOhm, "contactsOhm");
    }
}
