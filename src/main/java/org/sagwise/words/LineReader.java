package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.Entries;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;

/** Reads a line, clause by clause, into a {@link Recipe}. Used for one line and thrown away. */
final class LineReader {

    private final LineNotes notes;
    private final Recipe recipe;
    private final Topic topic;
    private final CellClauses cells;
    private final CoilClauses coils;
    private final JointClauses joints;

    LineReader(Catalogue catalogue) {
        notes = new LineNotes(catalogue);
        recipe = notes.recipe();
        topic = new Topic(catalogue);
        cells = new CellClauses(notes);
        coils = new CoilClauses(notes);
        joints = new JointClauses(notes, topic);
    }

    /** Every id of the catalogue that a line may name. */
    static Set<String> entries(Catalogue catalogue) {
        Set<String> ids = new TreeSet<>();
        Stream<Entries<? extends CatalogueEntry>> families = Stream.concat(
                Stream.of(PartKind.values()).map(catalogue::models),
                Stream.of(catalogue.alloys(), catalogue.contacts()));
        families.forEach(family -> ids.addAll(family.ids()));
        return ids;
    }

    Recipe read(String line, Locale locale) {
        List<List<Item>> clauses = new Lexer(entries(notes.catalogue()), locale).clauses(line);
        clauses.forEach(this::clause);
        notes.letters().forEach(this::lettered);
        joints.finish();
        return recipe;
    }

    private void lettered(int cell, Span span) {
        boolean unclear = recipe.layout().isEmpty() && !notes.complaints().isEmpty();
        if (cell < recipe.count() || unclear) {
            return;
        }
        String letter = BenchBuilder.letter(cell);
        if (recipe.layout().isEmpty()) {
            notes.complain(span, WordsFault.NO_LAYOUT, letter);
        } else {
            notes.complain(span, WordsFault.NO_SUCH_CELL, letter, BenchBuilder.letter(recipe.count() - 1));
        }
    }

    /** What it says where, and what is wrong with it. */
    LineNotes notes() {
        return notes;
    }

    private void clause(List<Item> items) {
        List<Item> unread = items.stream()
                .filter(item -> item instanceof Item.Strange || item instanceof Item.Odd)
                .toList();
        if (!unread.isEmpty()) {
            // What else such a clause would be blamed for is but an echo; how the cells lie is still wanted.
            unread.forEach(notes::strange);
            items.stream()
                    .filter(Item.Arranged.class::isInstance)
                    .map(Item.Arranged.class::cast)
                    .forEach(cells::arrange);
            return;
        }
        if (items.get(0) instanceof Item.Letter) {
            if (items.stream().anyMatch(topic::isJoint)) {
                joints.joint(items);
            } else {
                cells.own(items);
            }
            return;
        }
        Clause clause = topic.of(items);
        switch (clause) {
            case CELLS -> cells.all(items);
            case COIL -> coils.read(items);
            case WIRE -> joints.wire(items);
            case CONTACTS -> joints.contacts(items);
            case JOINT -> joints.joint(items);
            case SHORT -> joints.shorted(items);
            case AMBIENT -> ambient(items);
            case HELD -> only(Clause.HELD, items, recipe::hold);
            case IDEAL -> only(Clause.IDEAL, items, recipe::idealise);
            case BUTTON, FUSE, RESETTABLE, GUARD, BOARD, CHARGER -> single(clause, items);
        }
    }

    private void single(Clause clause, List<Item> given) {
        List<Item> items = new ArrayList<>(given);
        PartKind kind = clause.kind().orElseThrow();
        if (Items.take(items, "none").isPresent()) {
            if (clause == Clause.BUTTON) {
                recipe.leaveButtonOut();
            }
            Items.take(items, clause.word());
            items.forEach(notes::strange);
            return;
        }
        if (clause == Clause.GUARD && Items.take(items, "each").isPresent()) {
            recipe.guard(Recipe.Guards.BEHIND_EACH_CELL);
        }
        Keys before = recipe.single().getOrDefault(kind, Keys.NONE);
        Keys keys = notes.read(clause, before, items, kind.word());
        recipe.single().put(kind, keys);
        if (clause != Clause.BUTTON && clause != Clause.GUARD && lacksRating(kind, keys)) {
            given.stream()
                    .filter(item -> Items.means(item, clause.word()))
                    .map(Item.Phrase.class::cast)
                    .findFirst()
                    .ifPresent(word -> notes.complain(word.span(), WordsFault.NO_VALUE, word.text()));
        }
    }

    private static boolean lacksRating(PartKind kind, Keys keys) {
        return !keys.has("model")
                && Stream.of("rating_A", "hold_A", "power_W", "current_A")
                        .filter(key -> kind.keys().stream()
                                .anyMatch(spec -> spec.name().equals(key)))
                        .noneMatch(keys::has);
    }

    private void ambient(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        Items.take(items, Clause.AMBIENT.word());
        Keys keys = notes.read(Clause.AMBIENT, Keys.NONE, items, "ambient");
        keys.number("ambient_C")
                .ifPresentOrElse(
                        recipe::surround, () -> notes.complain(clause.get(0).span(), WordsFault.NO_TEMPERATURE));
    }

    private void only(Clause clause, List<Item> given, Runnable effect) {
        List<Item> items = new ArrayList<>(given);
        Items.take(items, clause.word());
        items.forEach(notes::strange);
        effect.run();
    }
}
