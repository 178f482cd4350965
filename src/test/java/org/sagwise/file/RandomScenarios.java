package org.sagwise.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.sagwise.part.Catalogue;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Note;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Placement;
import org.sagwise.scenario.Probes;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.TerminalRef;

/** Scenarios of every kind of part with every key, drawn from the tables of the format. */
public final class RandomScenarios {

    private final Random random;
    private final RandomData data;
    private final Catalogue catalogue;

    public RandomScenarios(Random random, Catalogue catalogue) {
        this.random = random;
        this.data = new RandomData(random);
        this.catalogue = catalogue;
    }

    public Scenario scenario() {
        List<Part> parts = new ArrayList<>();
        int count = random.nextInt(12);
        for (int i = 0; i < count; i++) {
            parts.add(part("p-" + i + (random.nextBoolean() ? "_Z" : "")));
        }
        List<TerminalRef> terminals =
                parts.stream().flatMap(part -> part.terminals().stream()).toList();
        Scenario bare = new Scenario(
                data.text(40),
                data.text(200),
                data.number(ScenarioKeys.AMBIENT),
                parts,
                links(terminals),
                random.nextBoolean(),
                probes(terminals),
                notes(parts),
                placement(parts),
                random.nextBoolean() ? Optional.of(data.object(0)) : Optional.empty(),
                List.of());
        return withKeyOrder(bare);
    }

    private Scenario withKeyOrder(Scenario bare) {
        List<String> order = new ArrayList<>(ScenarioKeys.TOP_ORDER);
        if (bare.probes().isEmpty()) {
            order.remove("probes");
        }
        if (bare.foreign().isEmpty()) {
            order.remove("x");
        }
        Collections.shuffle(order, random);
        return new Scenario(
                bare.title(),
                bare.about(),
                bare.ambientC(),
                bare.parts(),
                bare.links(),
                bare.fired(),
                bare.probes(),
                bare.notes(),
                bare.placement(),
                bare.foreign(),
                order);
    }

    private Part part(String id) {
        PartKind kind = PartKind.values()[random.nextInt(PartKind.values().length)];
        Map<String, Object> keys = repaired(
                values(kind.keys(), kind), kind.keys(), kind.descriptor().keys().rules(), kind);
        keys.put("id", id);
        keys.put("kind", kind.word());
        if (random.nextBoolean()) {
            keys.put("label", data.text(20));
        }
        if (random.nextInt(4) == 0) {
            keys.put("x", data.object(0));
        }
        return Part.of(shuffled(keys));
    }

    private Map<String, Object> values(List<KeySpec> specs, PartKind kind) {
        Map<String, Object> keys = new LinkedHashMap<>();
        for (KeySpec spec : specs) {
            if (spec.need() == KeySpec.Need.REQUIRED || random.nextBoolean()) {
                keys.put(spec.name(), value(spec.type(), kind));
            }
        }
        return keys;
    }

    private Object value(KeySpec.Type type, PartKind kind) {
        if (type instanceof KeySpec.NumberType number) {
            return data.number(number);
        } else if (type instanceof KeySpec.FlagType) {
            return random.nextBoolean();
        } else if (type instanceof KeySpec.ChoiceType choice) {
            return data.one(choice.choices());
        } else if (type instanceof KeySpec.GroupType group) {
            return new Keys(repaired(values(group.keys(), kind), group.keys(), group.rules(), kind));
        } else if (type instanceof KeySpec.ForeignType) {
            return data.object(0);
        } else if (type instanceof KeySpec.CatalogueType shelf) {
            return data.one(shelf.shelf() == KeySpec.Shelf.ALLOY ? alloys() : models(kind));
        }
        return data.text(20);
    }

    private List<String> alloys() {
        return List.copyOf(catalogue.alloys().ids());
    }

    private List<String> models(PartKind kind) {
        return List.copyOf(catalogue.models(kind).ids());
    }

    /** Makes keys that were drawn one by one agree with the rules that span several. */
    private Map<String, Object> repaired(
            Map<String, Object> keys, List<KeySpec> specs, List<KeyRule> rules, PartKind kind) {
        // What must be there is there before two of them are put in order.
        List<KeyRule> orderedLast = rules.stream()
                .sorted(Comparator.comparing(KeyRule.Ordered.class::isInstance))
                .toList();
        for (KeyRule rule : orderedLast) {
            if (rule instanceof KeyRule.ExactlyOne one) {
                String kept = data.one(one.names());
                one.names().stream().filter(name -> !name.equals(kept)).forEach(keys::remove);
                say(keys, kept, specs, kind);
            } else if (rule instanceof KeyRule.OneOrModel one) {
                String kept = data.one(one.names());
                one.names().stream().filter(name -> !name.equals(kept)).forEach(keys::remove);
                if (!keys.containsKey("model")) {
                    say(keys, kept, specs, kind);
                }
            } else if (rule instanceof KeyRule.Together both
                    && keys.containsKey(both.one()) != keys.containsKey(both.other())) {
                keys.remove(both.one());
                keys.remove(both.other());
            } else if (rule instanceof KeyRule.Ordered ordered
                    && keys.get(ordered.low()) instanceof Double low
                    && keys.get(ordered.high()) instanceof Double high
                    && low >= high) {
                keys.remove(ordered.high());
                boolean needed = rules.stream()
                        .anyMatch(other -> other instanceof KeyRule.ModelOr or
                                && or.names().contains(ordered.low()));
                if (!needed) {
                    keys.remove(ordered.low());
                }
            } else if (rule instanceof KeyRule.ModelOr needed && !keys.containsKey("model")) {
                needed.names().forEach(name -> say(keys, name, specs, kind));
            }
        }
        return keys;
    }

    private void say(Map<String, Object> keys, String name, List<KeySpec> specs, PartKind kind) {
        specs.stream()
                .filter(spec -> spec.name().equals(name))
                .forEach(spec -> keys.computeIfAbsent(name, key -> value(spec.type(), kind)));
    }

    private List<Link> links(List<TerminalRef> terminals) {
        List<Link> links = new ArrayList<>();
        int count = terminals.size() < 2 ? 0 : random.nextInt(15);
        for (int i = 0; i < count; i++) {
            TerminalRef from = data.one(terminals);
            TerminalRef to = data.one(terminals);
            if (!from.equals(to)) {
                links.add(link(from, to, "l" + i));
            }
        }
        return links;
    }

    private Link link(TerminalRef from, TerminalRef to, String id) {
        Map<String, Object> keys = new LinkedHashMap<>();
        keys.put("from", from.toString());
        keys.put("to", to.toString());
        switch (random.nextInt(3)) {
            case 0 -> keys.put("ideal", true);
            case 1 -> {
                keys.put("contact_mohm", random.nextInt(100) / 4.0);
                if (random.nextBoolean()) {
                    keys.put("model", data.one(List.copyOf(catalogue.contacts().ids())));
                }
            }
            default -> keys.put("jumper", value(ScenarioKeys.JUMPER, PartKind.CELL));
        }
        if (random.nextBoolean()) {
            keys.put("id", id);
        }
        if (random.nextInt(4) == 0) {
            keys.put("x", data.object(0));
        }
        return Link.of(shuffled(keys));
    }

    private Optional<Probes> probes(List<TerminalRef> terminals) {
        return terminals.isEmpty() || random.nextBoolean()
                ? Optional.empty()
                : Optional.of(Probes.of(data.one(terminals), data.one(terminals))
                        .turnedTo(data.one(List.of(MeterMode.values()))));
    }

    private List<Note> notes(List<Part> parts) {
        return parts.stream()
                .filter(part -> random.nextInt(4) == 0)
                .map(part -> Note.of(part.id(), data.text(60)))
                .map(note -> random.nextBoolean() ? note : note.lying(away(), away()))
                .toList();
    }

    private double away() {
        return random.nextInt(2_000) / 100.0 - 10;
    }

    private Map<String, Placement> placement(List<Part> parts) {
        Map<String, Placement> places = new LinkedHashMap<>();
        for (Part part : parts) {
            if (random.nextBoolean()) {
                Map<String, Object> keys = values(ScenarioKeys.PLACEMENT, part.kind());
                places.put(part.id(), Placement.of(shuffled(keys)));
            }
        }
        return places;
    }

    private Keys shuffled(Map<String, Object> keys) {
        List<Map.Entry<String, Object>> entries = new ArrayList<>(keys.entrySet());
        Collections.shuffle(entries, random);
        Map<String, Object> result = new LinkedHashMap<>();
        entries.forEach(entry -> result.put(entry.getKey(), entry.getValue()));
        return new Keys(result);
    }
}
