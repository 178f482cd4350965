package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;
import org.sagwise.text.Texts;

/**
 * Finds the recipe of a bench: what its parts are by what they are joined to, then its joints by the places that a
 * bench of that recipe has. A recipe counts only where the bench built by it is the same circuit.
 */
final class BenchWords {

    private static final String CAN = "can";

    private final Scenario bench;
    private final Catalogue catalogue;
    private final Locale locale;
    private final Recipe recipe = new Recipe();
    private final Set<String> reasons = new TreeSet<>();

    /** Terminals of the bench, by those of a bench that is built of the recipe. */
    private final Map<TerminalRef, TerminalRef> own = new LinkedHashMap<>();

    private BenchWords(Scenario bench, Catalogue catalogue, Locale locale) {
        this.bench = bench;
        this.catalogue = catalogue;
        this.locale = locale;
    }

    static SaidBench say(Scenario bench, Catalogue catalogue, Locale locale) {
        int cells = bench.partsOf(PartKind.CELL).size();
        List<PackShape> packs =
                cells == 0 || cells > Recipe.MOST_CELLS ? List.of() : PackShape.of(bench, Nets.of(bench, link -> true));
        Set<String> reasons = new TreeSet<>();
        for (int i = 0; i < Math.max(1, packs.size()); i++) {
            BenchWords words = new BenchWords(bench, catalogue, locale);
            Optional<String> line = words.line(i < packs.size() ? Optional.of(packs.get(i)) : Optional.empty());
            if (line.isPresent()) {
                return new SaidBench.Line(line.get());
            }
            if (i == 0) {
                reasons.addAll(words.reasons);
            }
        }
        return new SaidBench.Unsaid(List.copyOf(reasons));
    }

    /** The line, if one can be found that makes the same circuit. */
    private Optional<String> line(Optional<PackShape> pack) {
        Optional<String> line = recipe(pack).map(new LineWriter(locale)::write);
        boolean same = line.isPresent()
                && line.get().length() <= TradeWords.LONGEST
                && TradeWords.read(line.get(), catalogue, locale)
                        .scenario()
                        .filter(made -> new SameCircuit(bench, own).holds(made))
                        .isPresent();
        if (line.isPresent() && !same) {
            cannot("whole");
        }
        return line.filter(it -> same);
    }

    private String sentence(String key, Object... words) {
        return Texts.in("words", locale).say("unsaid." + key, words);
    }

    private void cannot(String key, Object... words) {
        reasons.add(sentence(key, words));
    }

    private String name(Part part) {
        return Names.in(locale).part(part);
    }

    private Optional<Recipe> recipe(Optional<PackShape> pack) {
        strangers();
        if (pack.isEmpty()) {
            cannot("layout");
        }
        if (!reasons.isEmpty()) {
            return Optional.empty();
        }
        pack(pack.get());
        new LoopWords(bench, recipe, own, part -> cannot("part", name(part))).read(pack.get());
        if (reasons.isEmpty()) {
            surroundings();
            joints();
        }
        return reasons.isEmpty() ? Optional.of(recipe) : Optional.empty();
    }

    /** What no line has words for, whatever it is joined to. */
    private void strangers() {
        for (Part part : bench.parts()) {
            if (part.kind() == PartKind.SUPPLY || part.kind() == PartKind.METER) {
                cannot("kind", name(part));
                continue;
            }
            Clause.of(part.kind())
                    .flatMap(clause -> LineWriter.unsayable(clause, SaidKeys.of(part)))
                    .ifPresent(key -> cannot("key", name(part), key));
        }
        for (Link link : bench.links()) {
            if (link.from().terminal().equals(CAN) || link.to().terminal().equals(CAN)) {
                cannot("link", link.from(), link.to());
            }
        }
    }

    private void pack(PackShape pack) {
        recipe.arrange(new Item.Arranged(new Span(0, 0), pack.rows().size(), pack.side()));
        List<String> ids = pack.cells();
        List<Keys> all = ids.stream()
                .map(id -> SaidKeys.of(bench.part(id).orElseThrow()))
                .toList();
        Keys most = JointWords.commonest(all).orElseThrow();
        boolean shared = all.stream().allMatch(keys -> difference(most, keys).isPresent());
        recipe.sayOfCells(shared ? most : Keys.NONE);
        for (int cell = 0; cell < ids.size(); cell++) {
            Keys said = shared ? difference(most, all.get(cell)).orElseThrow() : all.get(cell);
            if (!said.values().isEmpty()) {
                recipe.own().put(cell, said);
            }
            if (pack.turned().contains(ids.get(cell))) {
                recipe.reversed().add(cell);
            }
            for (String end : List.of("+", "-")) {
                own.put(new TerminalRef(BenchBuilder.letter(cell), end), new TerminalRef(ids.get(cell), end));
            }
            String guard = pack.guards().get(ids.get(cell));
            if (guard != null) {
                LoopWords.straight(own, BenchBuilder.guardId(cell), guard, List.of("in", "out"));
            }
        }
        pack.guards().values().stream().findFirst().ifPresent(guard -> {
            recipe.guard(Recipe.Guards.BEHIND_EACH_CELL);
            recipe.single()
                    .put(PartKind.REVERSE_GUARD, SaidKeys.of(bench.part(guard).orElseThrow()));
        });
    }

    /** What one cell has to say besides what all say; empty if that cannot be. */
    private static Optional<Keys> difference(Keys all, Keys one) {
        Keys own = Keys.NONE;
        for (var entry : one.values().entrySet()) {
            if (!entry.getValue().equals(all.values().get(entry.getKey()))) {
                own = own.with(entry.getKey(), entry.getValue());
            }
        }
        if (CellMaker.over(all, own).values().equals(one.values())) {
            return Optional.of(own);
        }
        return CellMaker.over(all, one).values().equals(one.values()) ? Optional.of(one) : Optional.empty();
    }

    private void surroundings() {
        if (bench.ambientC() != ScenarioKeys.AMBIENT_C) {
            recipe.surround(bench.ambientC());
        }
        if (bench.fired()) {
            recipe.hold();
        }
    }

    /** Reads each joint at the place where a bench of the recipe has one. */
    private void joints() {
        if (!bench.links().isEmpty() && bench.links().stream().allMatch(link -> link.joint() instanceof Joint.Ideal)) {
            recipe.idealise();
        }
        new Hubs(bench, recipe, own).find();
        BenchBuilder builder = new BenchBuilder(recipe, catalogue, locale);
        List<Link> places = builder.build().links();
        List<Link> found = new ArrayList<>();
        List<Link> left = new ArrayList<>(bench.links());
        for (Link place : places) {
            TerminalRef from = own.get(place.from());
            TerminalRef to = own.get(place.to());
            Optional<Link> link = left.stream()
                    .filter(it -> from != null && to != null && it.joins(from, to))
                    .findFirst();
            if (link.isEmpty()) {
                cannot("whole");
                return;
            }
            left.remove(link.get());
            found.add(link.get());
        }
        left.forEach(link -> cannot("link", link.from(), link.to()));
        if (left.isEmpty() && !recipe.isIdeal()) {
            new JointWords(
                            recipe,
                            builder.slots(),
                            found.stream().map(Link::joint).toList())
                    .read();
        }
    }
}
