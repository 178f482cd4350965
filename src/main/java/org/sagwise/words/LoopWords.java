package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/** Finds what a bench has besides its cells, each with the end that looks to the pack's plus. */
final class LoopWords {

    private final Scenario bench;
    private final Recipe recipe;
    private final Map<TerminalRef, TerminalRef> own;
    private final Consumer<Part> unsaid;
    private final Nets nets;

    /**
     * @param own takes the terminals of the bench, by those of a bench that is built of the recipe
     * @param unsaid takes parts for which there are no words
     */
    LoopWords(Scenario bench, Recipe recipe, Map<TerminalRef, TerminalRef> own, Consumer<Part> unsaid) {
        this.bench = bench;
        this.recipe = recipe;
        this.own = own;
        this.unsaid = unsaid;
        this.nets = Nets.of(bench, link -> true);
    }

    /** Notes a part that lies as one of the recipe's does. */
    static void straight(Map<TerminalRef, TerminalRef> own, String id, String there, List<String> terminals) {
        terminals.forEach(end -> own.put(new TerminalRef(id, end), new TerminalRef(there, end)));
    }

    void read(PackShape pack) {
        int plus = nets.of(top(pack));
        int minus = nets.of(bottom(pack));
        int at = plus;
        for (PartKind kind : List.of(PartKind.FUSE, PartKind.PTC, PartKind.REVERSE_GUARD, PartKind.SWITCH)) {
            List<Part> those = bench.partsOf(kind).stream()
                    .filter(part -> !pack.guards().containsValue(part.id()))
                    .toList();
            those.stream().skip(1).forEach(unsaid);
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
        those.stream().skip(1).forEach(unsaid);
        if (!those.isEmpty()) {
            recipe.single().put(kind, SaidKeys.of(those.get(0)));
            straight(own, kind.word(), those.get(0).id(), terminals);
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
                unsaid.accept(part);
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
}
