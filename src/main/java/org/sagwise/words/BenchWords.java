package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
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
    private final Nets nets;
    private final Recipe recipe = new Recipe();
    private final Set<String> reasons = new TreeSet<>();

    /** Terminals of the bench, by those of a bench that is built of the recipe. */
    private final Map<TerminalRef, TerminalRef> own = new LinkedHashMap<>();

    private BenchWords(Scenario bench, Catalogue catalogue, Locale locale) {
        this.bench = bench;
        this.catalogue = catalogue;
        this.locale = locale;
        this.nets = Nets.of(bench, link -> true);
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
        parts(pack.get());
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
                straight(BenchBuilder.guardId(cell), guard, List.of("in", "out"));
            }
        }
        pack.guards().values().stream().findFirst().ifPresent(guard -> {
            recipe.guard(Recipe.Guards.BEHIND_EACH_CELL);
            recipe.single()
                    .put(PartKind.REVERSE_GUARD, SaidKeys.of(bench.part(guard).orElseThrow()));
        });
    }

    private void straight(String id, String there, List<String> terminals) {
        terminals.forEach(end -> own.put(new TerminalRef(id, end), new TerminalRef(there, end)));
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

    /** Everything but cells, each with the end that looks to the pack's plus. */
    private void parts(PackShape pack) {
        int plus = nets.of(top(pack));
        int minus = nets.of(bottom(pack));
        int at = plus;
        for (PartKind kind : List.of(PartKind.FUSE, PartKind.PTC, PartKind.REVERSE_GUARD, PartKind.SWITCH)) {
            List<Part> those = bench.partsOf(kind).stream()
                    .filter(part -> !pack.guards().containsValue(part.id()))
                    .toList();
            those.stream().skip(1).forEach(part -> cannot("part", name(part)));
            if (!those.isEmpty()) {
                Part part = those.get(0);
                recipe.single().put(kind, SaidKeys.of(part));
                at = across(part, kind.word(), at);
            } else if (kind == PartKind.SWITCH) {
                recipe.leaveButtonOut();
            }
        }
        only(PartKind.CHARGER, List.of("+", "-"));
        only(PartKind.BOARD, PartKind.BOARD.terminals());
        if (recipe.single().containsKey(PartKind.CHARGER)
                && bench.partsOf(PartKind.COIL).isEmpty()
                && bench.partsOf(PartKind.BOARD).isEmpty()
                && recipe.single().size() == 1) {
            recipe.leaveButtonOut();
        }
        coils(bench.partsOf(PartKind.BOARD).stream()
                .findFirst()
                .map(board -> nets.of(board.terminal("out+")))
                .orElse(at));
        shorts(plus, minus);
    }

    private TerminalRef top(PackShape pack) {
        String cell = pack.rows().get(0).get(0);
        String guard = pack.guards().get(cell);
        return guard != null
                ? new TerminalRef(guard, "out")
                : new TerminalRef(cell, pack.turned().contains(cell) ? "-" : "+");
    }

    private static TerminalRef bottom(PackShape pack) {
        String cell = pack.rows().get(pack.rows().size() - 1).get(0);
        return new TerminalRef(cell, pack.turned().contains(cell) ? "+" : "-");
    }

    /** Notes which way round a part lies, and gives the net behind it. */
    private int across(Part part, String id, int at) {
        List<TerminalRef> ends = part.terminals();
        boolean round = nets.of(ends.get(0)) != at && nets.of(ends.get(1)) == at;
        boolean turns = round && part.kind() != PartKind.REVERSE_GUARD;
        own.put(new TerminalRef(id, ends.get(0).terminal()), ends.get(turns ? 1 : 0));
        own.put(new TerminalRef(id, ends.get(1).terminal()), ends.get(turns ? 0 : 1));
        return nets.of(ends.get(turns ? 0 : 1));
    }

    private void only(PartKind kind, List<String> terminals) {
        List<Part> those = bench.partsOf(kind);
        those.stream().skip(1).forEach(part -> cannot("part", name(part)));
        if (!those.isEmpty()) {
            recipe.single().put(kind, SaidKeys.of(those.get(0)));
            straight(kind.word(), those.get(0).id(), terminals);
        }
    }

    private void coils(int from) {
        List<Part> coils = new ArrayList<>(bench.partsOf(PartKind.COIL));
        boolean row = coils.size() > 1
                && coils.stream().map(coil -> ends(coil)).distinct().count() > 1;
        List<Part> ordered = new ArrayList<>();
        int at = from;
        for (int i = 0; i < bench.partsOf(PartKind.COIL).size(); i++) {
            int here = at;
            Part next = coils.stream()
                    .filter(coil -> ends(coil).contains(here))
                    .findFirst()
                    .orElse(coils.get(0));
            coils.remove(next);
            recipe.coils().add(SaidKeys.of(next));
            ordered.add(next);
            TerminalRef end = next.terminal("1");
            at = row ? nets.of(nets.of(end) == here ? next.terminal("2") : end) : at;
        }
        int before = from;
        for (int i = 0; i < ordered.size(); i++) {
            int behind = across(ordered.get(i), BenchBuilder.coilId(i, recipe), before);
            before = row ? behind : before;
        }
        if (recipe.coils().size() > 1) {
            recipe.layCoils(row ? Recipe.Coils.IN_A_ROW : Recipe.Coils.SIDE_BY_SIDE);
        }
    }

    private Set<Integer> ends(Part part) {
        return new TreeSet<>(part.terminals().stream().map(nets::of).toList());
    }

    /** A resistor that lies across coil or pack is a short. */
    private void shorts(int plus, int minus) {
        for (Part part : bench.partsOf(PartKind.RESISTOR)) {
            Set<Integer> ends = ends(part);
            boolean touchesCoil = touches(part, PartKind.COIL);
            boolean pack = !touchesCoil && ends.equals(new TreeSet<>(List.of(plus, minus)));
            TerminalRef coil = own.get(new TerminalRef(BenchBuilder.coilId(0, recipe), "1"));
            boolean atCoil =
                    touchesCoil && bench.part(coil.part()).map(this::ends).equals(Optional.of(ends));
            String place = pack ? WirePlace.PACK : WirePlace.COIL;
            if (!pack && !atCoil || recipe.shorts().containsKey(place)) {
                cannot("part", name(part));
                return;
            }
            recipe.shorts().put(place, Optional.of(part.keys().number("ohm", 0)));
            across(part, "short-" + place, pack ? plus : nets.of(coil));
        }
    }

    /** Whether a part is joined to one of a kind by a link of its own. */
    private boolean touches(Part part, PartKind kind) {
        return bench.links().stream()
                .filter(link -> link.touches(part.id()))
                .flatMap(link -> Stream.of(link.from(), link.to()))
                .anyMatch(end -> bench.part(end.part()).orElseThrow().kind() == kind);
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
