package org.sagwise.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.sagwise.part.Card;
import org.sagwise.part.KindDescriptor;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeyTable;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.KeyRules;
import org.sagwise.scenario.Problem;

/** Reads models and ready-made parts of any kind: keys under the same table as those of a scenario. */
final class CatalogueModels {

    private final CatalogueCards cards;
    private final Supplier<Set<String>> alloys;

    /**
     * @param alloys ids of the metals that a wire can be of
     */
    CatalogueModels(CatalogueCards cards, Supplier<Set<String>> alloys) {
        this.cards = cards;
        this.alloys = alloys;
    }

    Optional<PartModel> model(PartKind kind, CatalogueFields fields) {
        KindDescriptor descriptor = kind.descriptor();
        Card card = cards.read(fields);
        KeyTable table = descriptor.keys();
        List<String> needs = descriptor.family().orElseThrow().needs();
        List<KeySpec> specs = table.specs().stream()
                .filter(spec -> spec.tells() == KeySpec.Tells.MAKE)
                .map(spec -> needs.contains(spec.name()) ? KeySpec.required(spec.name(), spec.type()) : spec)
                .toList();
        Keys keys = fields.values(specs, said(table.rules(), specs), new KeyRules(Set.of(), alloys.get()));
        Optional<PartModel> model = fields.build(() -> new PartModel(card, kind, keys));
        model.ifPresent(it -> effective(it, table.rules(), fields));
        return fields.sound() ? model : Optional.empty();
    }

    /** Rules about what is said; of charge and rest volts, which are the piece's, a model says neither. */
    private static List<KeyRule> said(List<KeyRule> rules, List<KeySpec> specs) {
        List<String> names = specs.stream().map(KeySpec::name).toList();
        List<KeyRule> said = new ArrayList<>();
        for (KeyRule rule : rules) {
            if (rule instanceof KeyRule.OneOrModel one) {
                said.add(new KeyRule.ExactlyOne(one.names()));
            } else if (rule instanceof KeyRule.Together
                    || (rule instanceof KeyRule.ExactlyOne one && names.containsAll(one.names()))) {
                said.add(rule);
            }
        }
        return said;
    }

    /** Rules about what holds in the end. */
    private static void effective(PartModel model, List<KeyRule> rules, CatalogueFields fields) {
        for (KeyRule rule : rules) {
            if (rule instanceof KeyRule.Ordered ordered) {
                ordered(model, ordered.low(), ordered.high(), ordered.low(), fields);
            } else if (rule instanceof KeyRule.OrderedInCatalogue ordered) {
                ordered(model, ordered.low(), ordered.high(), ordered.high(), fields);
            }
        }
    }

    private static void ordered(PartModel model, String low, String high, String blamed, CatalogueFields fields) {
        double least = model.values().number(low).orElse(Double.NEGATIVE_INFINITY);
        double most = model.values().number(high).orElse(Double.POSITIVE_INFINITY);
        if (least >= most) {
            fields.defect(blamed, Problem.UPSIDE_DOWN, low, high);
        }
    }
}
