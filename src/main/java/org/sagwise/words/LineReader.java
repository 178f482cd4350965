package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.ContactSpec;
import org.sagwise.part.Entries;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;

/** Reads a line, clause by clause, into a {@link Recipe}. Used for one line and thrown away. */
final class LineReader {

    private final Catalogue catalogue;
    private final List<Complaint> complaints = new ArrayList<>();
    private final Map<String, Span> places = new LinkedHashMap<>();
    private final Map<Integer, Span> letters = new LinkedHashMap<>();
    private final Map<Integer, Span> coilNumbers = new LinkedHashMap<>();
    private final Recipe recipe = new Recipe();
    private Span shortPlace = new Span(0, 0);

    LineReader(Catalogue catalogue) {
        this.catalogue = catalogue;
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
        List<List<Item>> clauses = new Lexer(entries(catalogue), locale).clauses(line);
        clauses.forEach(this::clause);
        letters.forEach(this::lettered);
        if (recipe.shorts().containsKey(WirePlace.COIL) && recipe.coils().isEmpty()) {
            complaints.add(Complaint.of(shortPlace, WordsFault.NO_COIL_TO_SHORT));
        }
        boolean unclear = !complaints.isEmpty();
        coilNumbers.forEach((coil, span) -> {
            if (coil >= recipe.coils().size() && !unclear) {
                complaints.add(Complaint.of(span, WordsFault.NO_SUCH_COIL, String.valueOf(coil + 1)));
            }
        });
        return recipe;
    }

    private void lettered(int cell, Span span) {
        boolean unclear = recipe.layout().isEmpty() && !complaints.isEmpty();
        if (cell < recipe.count() || unclear) {
            return;
        }
        String letter = BenchBuilder.letter(cell);
        complaints.add(
                recipe.layout().isEmpty()
                        ? Complaint.of(span, WordsFault.NO_LAYOUT, letter)
                        : Complaint.of(span, WordsFault.NO_SUCH_CELL, letter, BenchBuilder.letter(recipe.count() - 1)));
    }

    List<Complaint> complaints() {
        return complaints;
    }

    /** Where a key of a part was said, such as {@code B.rest_V}; that of all cells is {@code cells.rest_V}. */
    Map<String, Span> places() {
        return places;
    }

    private void clause(List<Item> items) {
        List<Item> unread = items.stream()
                .filter(item -> item instanceof Item.Strange || item instanceof Item.Odd)
                .toList();
        if (!unread.isEmpty()) {
            // What else such a clause would be blamed for is but an echo; how the cells lie is still wanted.
            unread.forEach(item -> complaints.add(TermReader.strange(item, catalogue)));
            items.stream()
                    .filter(Item.Arranged.class::isInstance)
                    .map(Item.Arranged.class::cast)
                    .forEach(this::arrange);
            return;
        }
        if (items.get(0) instanceof Item.Letter) {
            if (items.stream().anyMatch(this::isAboutJoint)) {
                joint(items);
            } else {
                own(items);
            }
            return;
        }
        switch (kind(items)) {
            case CELLS -> cells(items);
            case COIL -> coil(items);
            case WIRE -> wire(items);
            case CONTACTS -> contacts(items);
            case JOINT -> joint(items);
            case SHORT -> shorted(items);
            case AMBIENT -> ambient(items);
            case HELD -> only(Clause.HELD, items, recipe::hold);
            case IDEAL -> only(Clause.IDEAL, items, recipe::idealise);
            case BUTTON, FUSE, RESETTABLE, GUARD, BOARD, CHARGER -> single(kind(items), items);
        }
    }

    private boolean isAboutJoint(Item item) {
        return means(item, Clause.JOINT.word())
                || means(item, Clause.CONTACTS.word())
                || contact(item).isPresent();
    }

    private static boolean means(Item item, String id) {
        return item instanceof Item.Phrase phrase && phrase.means(id);
    }

    private static boolean has(List<Item> items, String id) {
        return items.stream().anyMatch(item -> means(item, id));
    }

    /** What a clause is about: what it is called, else what is in it. */
    private Clause kind(List<Item> items) {
        if (has(items, Clause.JOINT.word())) {
            return Clause.JOINT;
        }
        if (has(items, Clause.SHORT.word())) {
            return Clause.SHORT;
        }
        if (has(items, Clause.WIRE.word()) && !has(items, "wraps")) {
            return Clause.WIRE;
        }
        return items.stream()
                .flatMap(item -> Stream.of(Clause.values()).filter(clause -> means(item, clause.word())))
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

    /** What all cells say: layout, model or numbers, how full. */
    private void cells(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        arrange(items);
        take(items, "reversed").ifPresent(phrase -> {
            if (recipe.count() == 1) {
                recipe.reversed().add(0);
            } else {
                complaints.add(Complaint.of(phrase.span(), WordsFault.OUT_OF_PLACE, phrase.text()));
            }
        });
        recipe.sayOfCells(read(Clause.CELLS, recipe.cells(), items, "cells"));
    }

    private void arrange(List<Item> items) {
        for (Item item : List.copyOf(items)) {
            if (item instanceof Item.Arranged arranged) {
                items.remove(item);
                arrange(arranged);
            }
        }
        if (take(items, "single").isPresent() && recipe.layout().isEmpty()) {
            recipe.arrange(new Item.Arranged(new Span(0, 0), 1, 1));
        }
        Optional<Item> count = counted(items);
        Optional<Item.Phrase> side = take(items, "side-by-side");
        Optional<Item.Phrase> row = take(items, "in-a-row");
        if (count.isEmpty()) {
            boolean unknown = recipe.layout().isEmpty();
            Stream.of(side, row)
                    .flatMap(Optional::stream)
                    .filter(phrase -> unknown)
                    .forEach(phrase -> complaints.add(Complaint.of(phrase.span(), WordsFault.NO_VALUE, phrase.text())));
            side.filter(phrase -> recipe.rows() > 1 && recipe.side() == 1).ifPresent(this::contradiction);
            row.filter(phrase -> recipe.side() > 1 && recipe.rows() == 1).ifPresent(this::contradiction);
            return;
        }
        items.remove(count.get());
        int cells = count(count.get());
        if (cells > 1 && side.isEmpty() && row.isEmpty()) {
            String number = String.valueOf(cells);
            complaints.add(
                    Complaint.of(count.get().span(), WordsFault.WHICH_LAYOUT, number, number + "p", number + "s"));
            return;
        }
        arrange(new Item.Arranged(count.get().span(), row.isPresent() ? cells : 1, row.isPresent() ? 1 : cells));
    }

    private void contradiction(Item.Phrase phrase) {
        complaints.add(Complaint.of(phrase.span(), WordsFault.TWICE));
    }

    private void arrange(Item.Arranged arranged) {
        if (recipe.layout().isPresent()) {
            complaints.add(Complaint.of(arranged.span(), WordsFault.TWICE));
        } else if (arranged.rows() < 1
                || arranged.side() < 1
                || arranged.rows() * arranged.side() > Recipe.MOST_CELLS) {
            complaints.add(Complaint.of(arranged.span(), WordsFault.TOO_MANY_CELLS, String.valueOf(Recipe.MOST_CELLS)));
        } else {
            recipe.arrange(arranged);
        }
    }

    /** The number of {@code 2 cells} or {@code 2×}. */
    private static Optional<Item> counted(List<Item> items) {
        return IntStream.range(0, items.size())
                .filter(i -> items.get(i) instanceof Item.Times
                        || isWhole(items.get(i)) && (i == 0 || i + 1 < items.size() && isCounted(items.get(i + 1))))
                .mapToObj(items::get)
                .findFirst();
    }

    private static boolean isCounted(Item item) {
        return means(item, "cells") || means(item, "side-by-side") || means(item, "in-a-row");
    }

    private static boolean isWhole(Item item) {
        return item instanceof Item.Bare bare && bare.text().matches("[1-9]\\d?");
    }

    private static int count(Item item) {
        return item instanceof Item.Times times ? times.count() : (int) ((Item.Bare) item).value();
    }

    /** Takes a phrase out of a clause. */
    private static Optional<Item.Phrase> take(List<Item> items, String id) {
        Optional<Item.Phrase> found = items.stream()
                .filter(item -> means(item, id))
                .map(Item.Phrase.class::cast)
                .findFirst();
        found.ifPresent(items::remove);
        return found;
    }

    private Keys read(Clause clause, Keys before, List<Item> items, String where) {
        TermReader reader = new TermReader(clause, before, catalogue, complaints);
        Keys keys = reader.read(items);
        reader.places().forEach((key, span) -> {
            if (places.putIfAbsent(where + "." + key, span) != null
                    && before.names().contains(key)) {
                complaints.add(Complaint.of(span, WordsFault.TWICE));
            }
        });
        return keys;
    }

    /** What single cells say. */
    private void own(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        List<Integer> cells = letters(items);
        boolean turned = take(items, "reversed").isPresent();
        for (int cell : cells) {
            if (turned) {
                recipe.reversed().add(cell);
            }
            if (!items.isEmpty()) {
                String name = String.valueOf((char) ('A' + cell));
                Keys before = recipe.own().getOrDefault(cell, Keys.NONE);
                recipe.own().put(cell, read(Clause.CELLS, before, items, name));
            }
        }
        if (!turned && items.isEmpty()) {
            Item last = clause.get(clause.size() - 1);
            complaints.add(Complaint.of(last.span(), WordsFault.NO_VALUE, "A"));
        }
    }

    /** Takes the letters at the front. */
    private List<Integer> letters(List<Item> items) {
        List<Integer> cells = new ArrayList<>();
        while (!items.isEmpty() && items.get(0) instanceof Item.Letter letter) {
            cells.add(letter.cell());
            letters.put(letter.cell(), letter.span());
            items.remove(0);
        }
        return cells;
    }

    private void coil(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        if (take(items, "none").isPresent()) {
            return;
        }
        Optional<Item.Phrase> side = take(items, "side-by-side");
        Optional<Item.Phrase> row = take(items, "in-a-row");
        if (side.isPresent() || row.isPresent()) {
            recipe.layCoils(row.isPresent() ? Recipe.Coils.IN_A_ROW : Recipe.Coils.SIDE_BY_SIDE);
        }
        take(items, "single");
        int count = take(items, "double").isPresent() ? 2 : 1;
        for (int i = 0; i + 1 < items.size(); i++) {
            boolean times = items.get(i) instanceof Item.Times && !(items.get(i + 1) instanceof Item.Gauge);
            if (times || isWhole(items.get(i)) && means(items.get(i + 1), Clause.COIL.word())) {
                count = count(items.remove(i));
                break;
            }
        }
        for (List<Item> one : byOhms(items)) {
            String where = "coil" + recipe.coils().size();
            Keys keys = read(Clause.COIL, Keys.NONE, one, where);
            wound(keys, one);
            for (int i = 0; i < count && recipe.coils().size() < Recipe.MOST_CELLS; i++) {
                recipe.coils().add(keys);
            }
        }
    }

    /** Several ohms in one clause are several coils; what else is said holds for each. */
    private static List<List<Item>> byOhms(List<Item> items) {
        List<Item> ohms = new ArrayList<>();
        for (int i = 0; i < items.size(); i++) {
            boolean counts =
                    i + 1 < items.size() && (means(items.get(i + 1), "wraps") || means(items.get(i + 1), "strands"));
            boolean counted = i > 0 && (means(items.get(i - 1), "wraps") || means(items.get(i - 1), "strands"));
            boolean bare = items.get(i) instanceof Item.Bare && !counts && !counted;
            if (bare || items.get(i) instanceof Item.Amount amount && amount.unit() == Unit.OHM) {
                ohms.add(items.get(i));
            }
        }
        if (ohms.size() < 2) {
            return List.of(items);
        }
        List<List<Item>> coils = new ArrayList<>();
        for (Item ohm : ohms) {
            coils.add(items.stream()
                    .filter(item -> item == ohm || !ohms.contains(item))
                    .toList());
        }
        return coils;
    }

    /** A coil is known by its ohms or by all of its winding. */
    private void wound(Keys keys, List<Item> items) {
        Optional<Keys> wire = keys.group("wire");
        Span span = items.isEmpty()
                ? new Span(0, 0)
                : items.get(0).span().to(items.get(items.size() - 1).span());
        if (wire.isEmpty() && !keys.has("ohm")) {
            complaints.add(Complaint.of(span, WordsFault.NO_VALUE, "Ω"));
            return;
        }
        wire.ifPresent(said -> {
            List<String> lacks = new ArrayList<>();
            if (!said.has("alloy")) {
                lacks.add("alloy");
            }
            if (!said.has("awg") && !said.has("diameter_mm")) {
                lacks.add("gauge");
            }
            if (!said.has("wraps")) {
                lacks.add("wraps");
            }
            lacks.forEach(lack -> complaints.add(Complaint.of(span, WordsFault.WOUND_LACKS, WordsFault.clause(lack))));
        });
    }

    private void single(Clause clause, List<Item> given) {
        List<Item> items = new ArrayList<>(given);
        PartKind kind = clause.kind().orElseThrow();
        if (take(items, "none").isPresent()) {
            if (clause == Clause.BUTTON) {
                recipe.leaveButtonOut();
            }
            take(items, clause.word());
            items.forEach(item -> complaints.add(TermReader.strange(item, catalogue)));
            return;
        }
        if (clause == Clause.GUARD && take(items, "each").isPresent()) {
            recipe.guard(Recipe.Guards.BEHIND_EACH_CELL);
        }
        Keys before = recipe.single().getOrDefault(kind, Keys.NONE);
        Keys keys = read(clause, before, items, kind.word());
        recipe.single().put(kind, keys);
        if (clause != Clause.BUTTON && clause != Clause.GUARD && lacksRating(kind, keys)) {
            given.stream()
                    .filter(item -> means(item, clause.word()))
                    .map(Item.Phrase.class::cast)
                    .findFirst()
                    .ifPresent(word -> complaints.add(Complaint.of(word.span(), WordsFault.NO_VALUE, word.text())));
        }
    }

    private static boolean lacksRating(PartKind kind, Keys keys) {
        return !keys.has("model")
                && Stream.of("rating_A", "hold_A", "power_W", "current_A")
                        .filter(key -> kind.keys().stream()
                                .anyMatch(spec -> spec.name().equals(key)))
                        .noneMatch(keys::has);
    }

    private void wire(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        Optional<String> place = place(items);
        take(items, Clause.WIRE.word());
        Keys before =
                place.map(it -> recipe.wires().getOrDefault(it, Keys.NONE)).orElse(recipe.wire());
        Keys keys = read(Clause.WIRE, before, items, "wire");
        place.ifPresentOrElse(it -> recipe.wires().put(it, keys), () -> recipe.sayOfWires(keys));
    }

    /** Takes the place in the circuit that a clause speaks of. */
    private static Optional<String> place(List<Item> items) {
        return WirePlace.ALL.stream()
                .filter(place -> take(items, place).isPresent())
                .findFirst();
    }

    private void contacts(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        take(items, Clause.CONTACTS.word());
        mohm(items, clause).ifPresent(recipe::touch);
    }

    /** A contact by its kind, by its ohms or by both; mΩ. */
    private Optional<Double> mohm(List<Item> items, List<Item> clause) {
        Optional<Double> kind = Optional.empty();
        for (Item item : List.copyOf(items)) {
            Optional<ContactSpec> contact = contact(item);
            if (contact.isPresent()) {
                kind = contact.map(it -> it.ohm() * 1000);
                items.remove(item);
            }
        }
        Keys keys = read(Clause.JOINT, Keys.NONE, items, "joint");
        Optional<Double> said = keys.number("contact_mohm").stream().boxed().findFirst();
        if (said.isEmpty() && kind.isEmpty()) {
            complaints.add(Complaint.of(clause.get(clause.size() - 1).span(), WordsFault.WHICH_JOINT));
        }
        return said.isPresent() ? said : kind;
    }

    private Optional<ContactSpec> contact(Item item) {
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

    private void joint(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        take(items, Clause.JOINT.word());
        take(items, Clause.CONTACTS.word());
        List<Integer> cells = letters(items);
        Optional<Item> number = IntStream.range(1, items.size())
                .filter(i -> means(items.get(i - 1), Clause.COIL.word()) && isWhole(items.get(i)))
                .mapToObj(items::get)
                .findFirst();
        number.ifPresent(items::remove);
        Optional<String> place = cells.isEmpty() ? place(items) : Optional.empty();
        Optional<Double> mohm = mohm(items, clause);
        if (mohm.isEmpty()) {
            return;
        }
        if (number.isPresent()) {
            int coil = count(number.get()) - 1;
            coilNumbers.put(coil, number.get().span());
            recipe.coilJoints().put(coil, mohm.get());
        } else if (place.isPresent()) {
            recipe.joints().put(place.get(), mohm.get());
        } else if (cells.isEmpty()) {
            complaints.add(Complaint.of(clause.get(0).span(), WordsFault.NO_SUCH_PLACE));
        }
        cells.forEach(cell -> recipe.cellJoints().put(cell, mohm.get()));
    }

    private void shorted(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        take(items, Clause.SHORT.word());
        String place = take(items, Clause.COIL.word()).isPresent() ? WirePlace.COIL : WirePlace.PACK;
        take(items, WirePlace.PACK);
        take(items, Clause.CELLS.word());
        Keys keys = read(Clause.SHORT, Keys.NONE, items, "short");
        shortPlace = place.equals(WirePlace.COIL) ? clause.get(0).span() : shortPlace;
        recipe.shorts().put(place, keys.number("ohm").stream().boxed().findFirst());
    }

    private void ambient(List<Item> clause) {
        List<Item> items = new ArrayList<>(clause);
        take(items, Clause.AMBIENT.word());
        Keys keys = read(Clause.AMBIENT, Keys.NONE, items, "ambient");
        keys.number("ambient_C")
                .ifPresentOrElse(
                        recipe::surround,
                        () -> complaints.add(Complaint.of(clause.get(0).span(), WordsFault.NO_TEMPERATURE)));
    }

    private void only(Clause clause, List<Item> given, Runnable effect) {
        List<Item> items = new ArrayList<>(given);
        take(items, clause.word());
        items.forEach(item -> complaints.add(TermReader.strange(item, catalogue)));
        effect.run();
    }
}
