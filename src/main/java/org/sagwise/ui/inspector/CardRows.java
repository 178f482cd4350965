package org.sagwise.ui.inspector;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.controlsfx.control.PrefixSelectionComboBox;
import org.controlsfx.control.SearchableComboBox;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.ui.text.Wording;

/**
 * Makes the rows of a card from the tables of the format, so that no key is forgotten.
 *
 * @param catalogue whose models and alloys can be chosen
 * @param kind what kind of part the card is of
 * @param effect what holds where nothing is written
 */
record CardRows(Catalogue catalogue, PartKind kind, Supplier<EffectiveKeys> effect, Wording wording) {

    /** Sizes and chemistries are called by everyone as they are written. */
    private static final List<String> AS_WRITTEN = List.of("chemistry", "format");

    /** The row of a key; empty for nested objects and for what other tools keep. */
    Optional<CardRow> row(KeySpec spec, Change change) {
        if (spec.type() instanceof KeySpec.NumberType) {
            return Optional.of(new NumberRow(spec, change, effect, wording));
        } else if (spec.type() instanceof KeySpec.FlagType) {
            return Optional.of(new FlagRow(spec, change, wording));
        } else if (spec.type() instanceof KeySpec.ChoiceType choice) {
            // Without its list open a plain box takes no letters.
            return Optional.of(new ChoiceRow(
                    spec,
                    words(spec, choice),
                    new PrefixSelectionComboBox<>(),
                    choice.defaultValue(),
                    change,
                    wording));
        } else if (spec.type() instanceof KeySpec.CatalogueType type) {
            return Optional.of(new ChoiceRow(
                    spec, titles(entries(type)), new SearchableComboBox<>(), Optional.empty(), change, wording));
        } else if (spec.type() instanceof KeySpec.TextType) {
            return Optional.of(new TextRow(spec, "", change, wording));
        }
        return Optional.empty();
    }

    private Map<String, String> words(KeySpec spec, KeySpec.ChoiceType choice) {
        Map<String, String> words = new LinkedHashMap<>();
        choice.choices()
                .forEach(
                        word -> words.put(word, AS_WRITTEN.contains(spec.name()) ? word : wording.say("word." + word)));
        return words;
    }

    private Collection<? extends CatalogueEntry> entries(KeySpec.CatalogueType type) {
        if (type.shelf() == KeySpec.Shelf.ALLOY) {
            return catalogue.alloys().all();
        }
        return catalogue.models(kind).all();
    }

    private Map<String, String> titles(Collection<? extends CatalogueEntry> entries) {
        Map<String, String> titles = new LinkedHashMap<>();
        entries.forEach(entry -> titles.put(entry.id(), entry.card().title().in(wording.locale())));
        return titles;
    }
}
