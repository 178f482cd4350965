package org.sagwise.fuzz;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioWriter;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.Bound;
import org.sagwise.part.key.KeySpec.NumberType;
import org.sagwise.part.key.KeyTable;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.edit.SetPartKeys;
import org.sagwise.scenario.edit.ShelfItem;
import org.sagwise.scenario.edit.ShelfItems;

/** The ends of every range in the tables of keys are computed and explained, be they ever so odd. */
class KeyBoundariesTest {

    private static final List<Scenario> DEMOS = DemoScenarios.names().stream()
            .flatMap(name -> Answers.READER.read(DemoScenarios.bytes(name)).scenario().stream())
            .toList();

    /** Keys that a coil of ohms says instead, so that its wire can be varied. */
    private static final Keys WIRE = Keys.of("alloy", "kanthal", "awg", 24, "wraps", 6, "inner_mm", 3);

    @ParameterizedTest
    @EnumSource(PartKind.class)
    void part_everyNumberAtTheEndsOfItsRange_isAnswered(PartKind kind) {
        Scenario scenario = DEMOS.stream()
                .filter(demo -> !demo.partsOf(kind).isEmpty())
                .findFirst()
                .orElseGet(() -> lone(kind));
        Part part = scenario.partsOf(kind).get(0);
        int answered = 0;
        for (KeySpec spec : kind.keys()) {
            for (Object value : ends(spec, part)) {
                SetPartKeys edit = SetPartKeys.set(part.id(), spec.name(), value);
                answered += isAnswered(edit.apply(scenario)) ? 1 : 0;
            }
        }
        assertTrue(answered > 0, "of " + kind + " no number was tried");
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, Double.MIN_VALUE, 1e-310, 1e-155, 1e6})
    void jumper_lengthAndWidthAtTheirEnds_isAnswered(double lengthMm) {
        for (KeySpec spec : ScenarioKeys.JUMPER.keys()) {
            if (spec.type() instanceof NumberType number && !spec.name().equals("length_mm")) {
                for (double end : ends(number)) {
                    Keys jumper = Keys.of("awg", 18, "length_mm", lengthMm)
                            .without(KeyTable.alternatives(ScenarioKeys.JUMPER.rules(), spec.name()))
                            .with(spec.name(), end);
                    isAnswered(withJumper(DEMOS.get(0), jumper));
                }
            }
        }
    }

    private static Scenario withJumper(Scenario scenario, Keys jumper) {
        List<Link> links = new ArrayList<>(scenario.links());
        for (int i = 0; i < links.size(); i++) {
            if (!(links.get(i).joint() instanceof Joint.Ideal)) {
                Keys bare = links.get(i).keys().without("contact_mohm", "jumper");
                links.set(i, Link.of(bare.with("jumper", jumper)));
                return scenario.withLinks(links);
            }
        }
        throw new IllegalArgumentException("no joint to vary");
    }

    /** The first of its kind on the shelf across a cell. */
    private static Scenario lone(PartKind kind) {
        Part part = ShelfItems.of(Answers.CATALOGUE).stream()
                .map(ShelfItem::part)
                .filter(it -> it.kind() == kind)
                .findFirst()
                .orElseThrow()
                .with("id", "p");
        Part cell = Part.of("A", PartKind.CELL, "charge", 0.5, "model", "inr18650-2500-20A");
        return Scenario.of(
                "Alone",
                List.of(cell, part),
                List.of(
                        Link.touch(cell.terminal("+"), part.terminals().get(0), 1),
                        Link.touch(cell.terminal("-"), part.terminals().get(1), 1)));
    }

    private static List<Object> ends(KeySpec spec, Part part) {
        if (spec.type() instanceof NumberType number) {
            return ends(number).stream().map(Object.class::cast).toList();
        }
        if (spec.type() instanceof KeySpec.GroupType group) {
            Keys whole = part.keys()
                    .group(spec.name())
                    .or(() -> usual(spec, part.kind()))
                    .orElse(WIRE);
            return group.keys().stream()
                    .filter(key -> key.type() instanceof NumberType)
                    .flatMap(key -> ends((NumberType) key.type()).stream()
                            .map(end -> (Object) whole.without(KeyTable.alternatives(group.rules(), key.name()))
                                    .with(key.name(), end)))
                    .toList();
        }
        return List.of();
    }

    private static Optional<Keys> usual(KeySpec spec, PartKind kind) {
        return Answers.CATALOGUE.models(kind).all().stream()
                .flatMap(model -> model.keys().group(spec.name()).stream())
                .findFirst();
    }

    private static List<Double> ends(NumberType number) {
        double least = number.bound() == Bound.INCLUDED ? number.least() : Math.nextUp(number.least());
        return Stream.of(least, number.most()).toList();
    }

    /** Whether the rules let it through; then everything is computed and explained. */
    private static boolean isAnswered(Scenario scenario) {
        Loaded loaded = Answers.READER.read(ScenarioWriter.write(scenario).getBytes(StandardCharsets.UTF_8));
        Answers.of(loaded);
        return loaded.scenario().isPresent();
    }
}
