package org.sagwise.scenario.edit;

import java.util.Optional;
import org.sagwise.part.Card;
import org.sagwise.scenario.Part;

/**
 * Something that can be taken from the shelf.
 *
 * @param name names it among all goods, for looking it up
 * @param part the part as it comes; it gets an id of its own on the bench
 * @param card what the catalogue says about it; empty for what stands in no catalogue
 */
public record ShelfItem(String name, Part part, Optional<Card> card) {}
