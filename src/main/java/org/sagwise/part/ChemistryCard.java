package org.sagwise.part;

/**
 * What the catalogue says about a kind of cell in words.
 *
 * @param card id is the chemistry's name, title its full name
 * @param chemistry the kind
 */
public record ChemistryCard(Card card, Chemistry chemistry) implements CatalogueEntry {

    public ChemistryCard {
        if (!card.id().equals(chemistry.name())) {
            throw new IllegalArgumentException("the card must bear the chemistry's name");
        }
    }
}
