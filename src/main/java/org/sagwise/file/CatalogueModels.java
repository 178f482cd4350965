package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.sagwise.file.CatalogueDefect.Problem;
import org.sagwise.part.Card;
import org.sagwise.part.KindDescriptor;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeyTable;
import org.sagwise.part.key.Keys;

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
        List<KeySpec> specs = table.specs().stream()
                .filter(spec -> spec.tells() == KeySpec.Tells.MAKE)
                .toList();
        List<String> needs = descriptor.family().orElseThrow().needs();
        Keys keys = object(fields, specs, table.rules(), needs);
        Optional<PartModel> model = fields.build(() -> new PartModel(card, kind, keys));
        model.ifPresent(it -> effective(it, table.rules(), fields));
        return fields.sound() ? model : Optional.empty();
    }

    private Keys object(CatalogueFields fields, List<KeySpec> specs, List<KeyRule> rules, List<String> needs) {
        Set<String> names = specs.stream().map(KeySpec::name).collect(Collectors.toSet());
        fields.expect(names);
        rules.forEach(rule -> said(rule, names, fields));
        Map<String, Object> values = new LinkedHashMap<>();
        for (KeySpec spec : specs) {
            boolean needed = needs.contains(spec.name()) || spec.need() == KeySpec.Need.REQUIRED;
            if (needed && !fields.has(spec.name())) {
                fields.missing(spec.name());
            } else if (fields.has(spec.name())) {
                value(fields, spec).ifPresent(value -> values.put(spec.name(), value));
            }
        }
        Map<String, Object> inOrder = new LinkedHashMap<>();
        fields.keys().stream().filter(values::containsKey).forEach(name -> inOrder.put(name, values.get(name)));
        return new Keys(inOrder);
    }

    private Optional<Object> value(CatalogueFields fields, KeySpec spec) {
        KeySpec.Type type = spec.type();
        if (type instanceof KeySpec.NumberType number) {
            return fields.number(spec.name(), number).map(Object.class::cast);
        } else if (type instanceof KeySpec.FlagType) {
            return fields.flag(spec.name()).map(Object.class::cast);
        } else if (type instanceof KeySpec.ChoiceType choice) {
            return fields.word(spec.name(), choice.choices()).map(Object.class::cast);
        } else if (type instanceof KeySpec.CatalogueType) {
            return fields.word(spec.name(), alloys.get()).map(Object.class::cast);
        } else if (type instanceof KeySpec.GroupType group) {
            return fields.maybeObject(spec.name()).map(inner -> {
                Keys keys = object(inner, group.keys(), group.rules(), List.of());
                inner.finish();
                return keys;
            });
        }
        return Optional.empty();
    }

    /** Rules about what is said; of charge and rest volts, which are the piece's, a model says neither. */
    private static void said(KeyRule rule, Set<String> names, CatalogueFields fields) {
        if (rule instanceof KeyRule.ExactlyOne one && names.containsAll(one.names())) {
            exactlyOne(one.names(), fields);
        } else if (rule instanceof KeyRule.OneOrModel one) {
            exactlyOne(one.names(), fields);
        } else if (rule instanceof KeyRule.Together both && fields.has(both.one()) != fields.has(both.other())) {
            fields.missing(fields.has(both.one()) ? both.other() : both.one());
        }
    }

    private static void exactlyOne(List<String> names, CatalogueFields fields) {
        if (names.stream().filter(fields::has).count() != 1) {
            fields.defect("", Problem.ONE_OF, String.join(", ", names));
        }
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
            fields.defect(blamed, Problem.REFUSED, low + " must lie below " + high);
        }
    }
}
