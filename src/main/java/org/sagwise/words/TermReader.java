package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.sagwise.part.Catalogue;
import org.sagwise.part.NearMiss;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;

/** Reads the amounts and words of one clause into keys, by the table of its {@link Clause}. */
final class TermReader {

    private final Clause clause;
    private final Catalogue catalogue;
    private final List<Complaint> complaints;
    private final Map<String, Span> places = new LinkedHashMap<>();
    private Keys keys;

    /** A word that waits for its amount. */
    private Optional<Item.Phrase> waiting = Optional.empty();

    private boolean answered;

    TermReader(Clause clause, Keys before, Catalogue catalogue, List<Complaint> complaints) {
        this.clause = clause;
        this.keys = before;
        this.catalogue = catalogue;
        this.complaints = complaints;
    }

    /** Where in the line each key was said. */
    Map<String, Span> places() {
        return places;
    }

    /** The keys with everything that these items say besides. */
    Keys read(List<Item> items) {
        int at = 0;
        while (at < items.size()) {
            at += item(items.subList(at, items.size()));
        }
        settle();
        return keys;
    }

    private int item(List<Item> items) {
        Item first = items.get(0);
        if (first instanceof Item.Amount amount) {
            return amount(items, Optional.of(amount.unit()), amount.value());
        } else if (first instanceof Item.Bare bare) {
            return amount(items, Optional.empty(), bare.value());
        } else if (first instanceof Item.Gauge gauge) {
            word("awg", Optional.empty())
                    .ifPresentOrElse(
                            term -> put(term.key(), (double) gauge.awg(), gauge.span()), () -> outOfPlace(gauge));
        } else if (first instanceof Item.Times times) {
            word("strands", Optional.empty())
                    .ifPresentOrElse(
                            term -> put(term.key(), (double) times.count(), times.span()), () -> outOfPlace(times));
        } else if (first instanceof Item.Phrase phrase) {
            phrase(phrase);
        } else if (first instanceof Item.Entry entry) {
            entry(entry.id(), entry.span());
        } else if (first instanceof Item.Make make && clause == Clause.CELLS) {
            put(make.key(), make.word(), make.span());
        } else {
            complaints.add(strange(first, catalogue));
        }
        return 1;
    }

    /** An amount, and how many items it took with the word behind it. */
    private int amount(List<Item> items, Optional<Unit> unit, double value) {
        Span span = items.get(0).span();
        Optional<Clause.Term> before = waiting.flatMap(phrase -> term(phrase, unit));
        if (before.isPresent()) {
            answered = true;
            put(before.get().key(), before.get().keyed(value), span);
            return 1;
        }
        Optional<Clause.Term> behind = items.size() > 1 && items.get(1) instanceof Item.Phrase phrase
                ? term(phrase, unit).filter(term -> !hasOwn(items))
                : Optional.empty();
        if (behind.isPresent()) {
            put(behind.get().key(), behind.get().keyed(value), span);
            return 2;
        }
        word("", unit)
                .ifPresentOrElse(
                        term -> put(term.key(), term.keyed(value), span), () -> complaints.add(notHere(items.get(0))));
        return 1;
    }

    /** Whether the word behind an amount has one of its own; {@code 8 wraps 2 strands} counts what goes before. */
    private boolean hasOwn(List<Item> items) {
        return items.get(0) instanceof Item.Amount
                && items.size() > 2
                && items.get(2) instanceof Item.Amount amount
                && term((Item.Phrase) items.get(1), Optional.of(amount.unit())).isPresent();
    }

    private Complaint notHere(Item item) {
        if (item instanceof Item.Bare bare) {
            return Complaint.of(bare.span(), WordsFault.NO_UNIT, bare.text());
        }
        return Complaint.of(item.span(), WordsFault.NOT_OF.of(clause.word()));
    }

    private Optional<Clause.Term> term(Item.Phrase phrase, Optional<Unit> unit) {
        return clause.terms().stream()
                .filter(term -> phrase.means(term.word()) && term.unit().equals(unit))
                .findFirst();
    }

    private Optional<Clause.Term> word(String word, Optional<Unit> unit) {
        return clause.terms().stream()
                .filter(term -> term.word().equals(word) && term.unit().equals(unit))
                .findFirst();
    }

    private void phrase(Item.Phrase phrase) {
        settle();
        if (phrase.means(clause.word())) {
            return;
        }
        for (String id : phrase.ids()) {
            if (id.startsWith(Clause.MODEL) && clause == Clause.CELLS) {
                put("model", id.substring(Clause.MODEL.length()), phrase.span());
                return;
            }
            if (id.startsWith(Clause.ALLOY) && clause == Clause.COIL) {
                put("wire.alloy", id.substring(Clause.ALLOY.length()), phrase.span());
                return;
            }
        }
        boolean takesAmount = clause.terms().stream().anyMatch(term -> phrase.means(term.word()));
        if (takesAmount) {
            waiting = Optional.of(phrase);
            answered = false;
        } else if (!flag(phrase)) {
            outOfPlace(phrase);
        }
    }

    private boolean flag(Item.Phrase phrase) {
        Optional<Clause.Flag> flag =
                clause.flags().stream().filter(it -> phrase.means(it.word())).findFirst();
        flag.ifPresent(it -> put(it.key(), it.value(), phrase.span()));
        return flag.isPresent();
    }

    /** A word that got no amount says something by itself, or lacks it. */
    private void settle() {
        waiting.filter(phrase -> !answered && !flag(phrase))
                .ifPresent(phrase -> complaints.add(Complaint.of(phrase.span(), WordsFault.NO_VALUE, phrase.text())));
        waiting = Optional.empty();
    }

    private void entry(String id, Span span) {
        Optional<PartModel> model =
                clause.kind().flatMap(kind -> catalogue.models(kind).find(id));
        if (model.isPresent()) {
            take(clause.kind().get(), model.get(), span);
        } else if (clause == Clause.COIL && catalogue.alloys().find(id).isPresent()) {
            put("wire.alloy", id, span);
        } else {
            complaints.add(Complaint.of(span, WordsFault.OUT_OF_PLACE, id));
        }
    }

    /** A model is named; of what has no models, a copy is taken. */
    private void take(PartKind kind, PartModel model, Span span) {
        if (kind.descriptor().isModelled()) {
            put("model", model.id(), span);
        } else {
            model.keys().values().forEach((key, value) -> put(key, value, span));
        }
    }

    private void put(String key, Object value, Span span) {
        if (places.containsKey(key)) {
            complaints.add(Complaint.of(span, WordsFault.TWICE));
        }
        places.put(key, span);
        keys = Clause.put(keys, key, value);
    }

    private void outOfPlace(Item item) {
        complaints.add(strange(item, catalogue));
    }

    /** What there is to say about an item that means nothing where it stands. */
    static Complaint strange(Item item, Catalogue catalogue) {
        if (item instanceof Item.Odd odd) {
            return odd.complaint();
        }
        if (item instanceof Item.Strange strange) {
            List<String> known = new ArrayList<>(Vocabulary.all().spellings());
            known.addAll(LineReader.entries(catalogue));
            NumberReader.UNITS.forEach(unit -> unit.scales().forEach(scale -> known.add(scale.plain())));
            return NearMiss.of(strange.text(), known).stream()
                    .findFirst()
                    .map(near -> Complaint.of(strange.span(), WordsFault.UNKNOWN_NEAR, strange.text(), near))
                    .orElseGet(() -> Complaint.of(strange.span(), WordsFault.UNKNOWN, strange.text()));
        }
        if (item instanceof Item.Bare bare) {
            return Complaint.of(bare.span(), WordsFault.NO_UNIT, bare.text());
        }
        return Complaint.of(item.span(), WordsFault.OUT_OF_PLACE, shown(item));
    }

    private static String shown(Item item) {
        if (item instanceof Item.Phrase phrase) {
            return phrase.text();
        } else if (item instanceof Item.Entry entry) {
            return entry.id();
        } else if (item instanceof Item.Make make) {
            return make.word();
        } else if (item instanceof Item.Letter letter) {
            return BenchBuilder.letter(letter.cell());
        } else if (item instanceof Item.Times times) {
            return times.count() + "×";
        }
        return item instanceof Item.Gauge gauge ? "AWG " + gauge.awg() : "";
    }
}
