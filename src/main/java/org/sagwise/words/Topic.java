package org.sagwise.words;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.ContactSpec;

/**
 * Finds out what a clause is about.
 *
 * @param catalogue whose ids stand for things of their kind
 */
record Topic(Catalogue catalogue) {

    /** What a clause is about: what it is called, else what is in it. */
    Clause of(List<Item> items) {
        if (Items.has(items, Clause.JOINT.word())) {
            return Clause.JOINT;
        }
        if (Items.has(items, Clause.SHORT.word())) {
            return Clause.SHORT;
        }
        if (Items.has(items, Clause.WIRE.word()) && !Items.has(items, "wraps")) {
            return Clause.WIRE;
        }
        return items.stream()
                .flatMap(item -> Stream.of(Clause.values()).filter(clause -> Items.means(item, clause.word())))
                .filter(clause -> clause != Clause.CELLS)
                .findFirst()
                .or(() ->
                        items.stream().flatMap(item -> byContent(item).stream()).findFirst())
                .orElse(Clause.CELLS);
    }

    private Optional<Clause> byContent(Item item) {
        if (item instanceof Item.Entry entry) {
            if (catalogue.contacts().find(entry.id()).isPresent()) {
                return Optional.of(Clause.CONTACTS);
            }
            return Stream.of(Clause.values())
                    .filter(clause -> clause.kind()
                            .filter(kind ->
                                    catalogue.models(kind).find(entry.id()).isPresent())
                            .isPresent())
                    .findFirst();
        }
        if (item instanceof Item.Phrase phrase) {
            if (phrase.ids().stream().anyMatch(id -> id.startsWith(Clause.ALLOY))) {
                return Optional.of(Clause.COIL);
            }
            if (phrase.means("transistor")) {
                return Optional.of(Clause.BUTTON);
            }
            return phrase.means("diode") ? Optional.of(Clause.GUARD) : Optional.empty();
        }
        return Optional.empty();
    }

    /** Whether it makes a clause that begins with letters of cells one about their joints. */
    boolean isJoint(Item item) {
        return Items.means(item, Clause.JOINT.word())
                || Items.means(item, Clause.CONTACTS.word())
                || contact(item).isPresent();
    }

    /** The contact that it names. */
    Optional<ContactSpec> contact(Item item) {
        if (item instanceof Item.Entry entry) {
            return catalogue.contacts().find(entry.id());
        }
        return item instanceof Item.Phrase phrase
                ? phrase.ids().stream()
                        .filter(id -> id.startsWith(Clause.CONTACT))
                        .map(id -> id.substring(Clause.CONTACT.length()))
                        .flatMap(id -> catalogue.contacts().find(id).stream())
                        .findFirst()
                : Optional.empty();
    }
}
