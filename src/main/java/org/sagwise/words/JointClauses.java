package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.sagwise.part.ContactSpec;
import org.sagwise.part.key.Keys;

/** Reads what a line says of its wires and joints, and of what is shorted. */
final class JointClauses {

    private final LineNotes notes;
    private final Recipe recipe;
    private final Topic topic;
    private final Map<Integer, Span> coils = new LinkedHashMap<>();
    private Span shortPlace = new Span(0, 0);

    JointClauses(LineNotes notes, Topic topic) {
        this.notes = notes;
        this.recipe = notes.recipe();
        this.topic = topic;
    }

    /** Tells of coils that are spoken of and that the line has not; known at its end. */
    void finish() {
        if (recipe.shorts().containsKey(WirePlace.COIL) && recipe.coils().isEmpty()) {
            notes.complain(shortPlace, WordsFault.NO_COIL_TO_SHORT);
        }
        boolean unclear = !notes.complaints().isEmpty();
        coils.forEach((coil, span) -> {
            if (coil >= recipe.coils().size() && !unclear) {
                notes.complain(span, WordsFault.NO_SUCH_COIL, String.valueOf(coil + 1));
            }
        });
    }

    void wire(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        Optional<String> place = place(items);
        Items.take(items, Clause.WIRE.word());
        Keys before =
                place.map(it -> recipe.wires().getOrDefault(it, Keys.NONE)).orElse(recipe.wire());
        Keys keys = notes.read(Clause.WIRE, before, items, "wire");
        place.ifPresentOrElse(it -> recipe.wires().put(it, keys), () -> recipe.sayOfWires(keys));
    }

    void contacts(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        Items.take(items, Clause.CONTACTS.word());
        mohm(items, clause).ifPresent(recipe::touch);
    }

    void joint(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        Items.take(items, Clause.JOINT.word());
        Items.take(items, Clause.CONTACTS.word());
        List<Integer> cells = notes.letters(items);
        Optional<Item> number = IntStream.range(1, items.size())
                .filter(i -> Items.means(items.get(i - 1), Clause.COIL.word()) && Items.isWhole(items.get(i)))
                .mapToObj(items::get)
                .findFirst();
        number.ifPresent(items::remove);
        Optional<String> place = cells.isEmpty() ? place(items) : Optional.empty();
        Optional<Double> mohm = mohm(items, clause);
        if (mohm.isEmpty()) {
            return;
        }
        if (number.isPresent()) {
            int coil = Items.count(number.get()) - 1;
            coils.put(coil, number.get().span());
            recipe.coilJoints().put(coil, mohm.get());
        } else if (place.isPresent()) {
            recipe.joints().put(place.get(), mohm.get());
        } else if (cells.isEmpty()) {
            notes.complain(clause.get(0).span(), WordsFault.NO_SUCH_PLACE);
        }
        cells.forEach(cell -> recipe.cellJoints().put(cell, mohm.get()));
    }

    void shorted(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        Items.take(items, Clause.SHORT.word());
        String place = Items.take(items, Clause.COIL.word()).isPresent() ? WirePlace.COIL : WirePlace.PACK;
        Items.take(items, WirePlace.PACK);
        Items.take(items, Clause.CELLS.word());
        Keys keys = notes.read(Clause.SHORT, Keys.NONE, items, "short");
        shortPlace = place.equals(WirePlace.COIL) ? clause.get(0).span() : shortPlace;
        recipe.shorts().put(place, keys.number("ohm").stream().boxed().findFirst());
    }

    /** A contact by its kind, by its ohms or by both; mΩ. */
    private Optional<Double> mohm(List<Item> items, List<Item> clause) {
        Optional<Double> kind = Optional.empty();
        for (Item item : List.copyOf(items)) {
            Optional<ContactSpec> contact = topic.contact(item);
            if (contact.isPresent()) {
                kind = contact.map(it -> it.ohm() * 1000);
                items.remove(item);
            }
        }
        Keys keys = notes.read(Clause.JOINT, Keys.NONE, items, "joint");
        Optional<Double> said = keys.number("contact_mohm").stream().boxed().findFirst();
        if (said.isEmpty() && kind.isEmpty()) {
            notes.complain(clause.get(clause.size() - 1).span(), WordsFault.WHICH_JOINT);
        }
        return said.isPresent() ? said : kind;
    }

    /** Takes the place in the circuit that a clause speaks of. */
    private static Optional<String> place(List<Item> items) {
        return WirePlace.ALL.stream()
                .filter(place -> Items.take(items, place).isPresent())
                .findFirst();
    }
}
