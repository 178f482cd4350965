package org.sagwise.scenario.net;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.RandomScenarios;
import org.sagwise.fixture.Renamed;
import org.sagwise.part.Catalogue;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/** What holds for the nets of any bench. */
class NetsProperties {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static final Predicate<Link> ALL = link -> true;

    private static final Predicate<Link> IDEAL = link -> link.joint() instanceof Joint.Ideal;

    /** The outside check: the transitive closure of the links (S. Warshall, J. ACM 9, 1962, from memory). */
    @Property(tries = 200, seed = "29112026")
    void joined_anyTwo_asTheTransitiveClosureSays(@ForAll Random random) {
        Scenario scenario = scenario(random);
        for (Predicate<Link> counts : List.of(ALL, metal(scenario), IDEAL)) {
            Nets nets = Nets.of(scenario, counts);
            boolean[][] reached = closure(scenario, nets.terminals(), counts);
            for (int i = 0; i < reached.length; i++) {
                for (int j = 0; j < reached.length; j++) {
                    TerminalRef one = nets.terminals().get(i);
                    TerminalRef other = nets.terminals().get(j);
                    assertEquals(reached[i][j], nets.joined(one, other), one + " " + other);
                    assertEquals(reached[i][j], nets.of(i) == nets.of(j));
                }
            }
        }
    }

    @Property(tries = 200, seed = "29112026")
    void of_moreLinksCount_isCoarser(@ForAll Random random) {
        Scenario scenario = scenario(random);
        Predicate<Link> metal = metal(scenario);
        Nets all = Nets.of(scenario, ALL);
        Nets byMetal = Nets.of(scenario, metal);
        Nets ideal = Nets.of(scenario, metal.and(IDEAL));
        assertCoarser(all, byMetal);
        assertCoarser(byMetal, ideal);
    }

    @Property(tries = 200, seed = "29112026")
    void of_partsAndLinksInOtherOrderUnderOtherNames_givesTheSameNets(@ForAll Random random) {
        Scenario scenario = scenario(random);
        Renamed renamed = Renamed.of(scenario, random);
        Set<Set<TerminalRef>> expected = members(Nets.of(scenario, ALL)).stream()
                .map(net -> net.stream().map(renamed::terminal).collect(Collectors.toSet()))
                .collect(Collectors.toSet());
        assertEquals(expected, members(Nets.of(renamed.scenario(), ALL)));
    }

    @Property(tries = 100, seed = "29112026")
    void members_ofAllNets_areAllTerminalsOnceInOrder(@ForAll Random random) {
        Nets nets = Nets.of(scenario(random), ALL);
        Set<TerminalRef> seen = new HashSet<>();
        int before = -1;
        for (int net = 0; net < nets.size(); net++) {
            int first = nets.terminals().number(nets.members(net).get(0));
            assertTrue(before < first, "nets are numbered by their first terminal");
            before = first;
            for (TerminalRef terminal : nets.members(net)) {
                assertTrue(seen.add(terminal));
                assertEquals(net, nets.of(terminal));
            }
        }
        assertEquals(nets.terminals().size(), seen.size());
    }

    private static Predicate<Link> metal(Scenario scenario) {
        return Bench.of(scenario, CATALOGUE)::joins;
    }

    private static void assertCoarser(Nets coarser, Nets finer) {
        assertTrue(coarser.size() <= finer.size());
        for (int net = 0; net < finer.size(); net++) {
            TerminalRef first = finer.members(net).get(0);
            assertTrue(finer.members(net).stream().allMatch(it -> coarser.joined(first, it)));
        }
    }

    private static boolean[][] closure(Scenario scenario, Terminals terminals, Predicate<Link> counts) {
        boolean[][] reached = new boolean[terminals.size()][terminals.size()];
        IntStream.range(0, reached.length).forEach(i -> reached[i][i] = true);
        for (Link link : scenario.links()) {
            if (counts.test(link)) {
                int from = terminals.number(link.from());
                int to = terminals.number(link.to());
                reached[from][to] = true;
                reached[to][from] = true;
            }
        }
        for (int k = 0; k < reached.length; k++) {
            for (int i = 0; i < reached.length; i++) {
                for (int j = 0; j < reached.length; j++) {
                    reached[i][j] |= reached[i][k] && reached[k][j];
                }
            }
        }
        return reached;
    }

    private static Set<Set<TerminalRef>> members(Nets nets) {
        return IntStream.range(0, nets.size())
                .mapToObj(net -> Set.copyOf(nets.members(net)))
                .collect(Collectors.toSet());
    }

    private static Scenario scenario(Random random) {
        return new RandomScenarios(random, CATALOGUE).scenario();
    }
}
