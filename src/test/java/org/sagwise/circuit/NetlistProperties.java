package org.sagwise.circuit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.RandomScenarios;
import org.sagwise.fixture.Renamed;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.scenario.net.Nets;

/** What holds for packs, rows and branches of any bench. */
class NetlistProperties {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    @Property(tries = 200, seed = "29112026")
    void packsAndRows_partsAndLinksInOtherOrderUnderOtherNames_areTheSame(@ForAll Random random) {
        Scenario scenario = new RandomScenarios(random, CATALOGUE).scenario();
        Renamed renamed = Renamed.of(scenario, random);
        Netlist one = held(scenario);
        Netlist other = held(renamed.scenario());

        assertEquals(packs(one, renamed.names()), packs(other, identity(renamed)));
        assertEquals(rows(one, renamed.names()), rows(other, identity(renamed)));
        assertEquals(one.size(), other.size());
        assertEquals(parts(one.loads(), renamed.names()), parts(other.loads(), identity(renamed)));
        assertEquals(parts(one.gaps(), renamed.names()), parts(other.gaps(), identity(renamed)));
    }

    /** A graph of v vertices, e edges and c pieces has e - v + c independent loops (Euler; Kirchhoff 1847). */
    @Property(tries = 200, seed = "29112026")
    void loops_ofAPack_areAsManyAsEulersFormulaSays(@ForAll Random random) {
        Netlist netlist = held(new RandomScenarios(random, CATALOGUE).scenario());
        for (Pack pack : netlist.packs()) {
            Set<Integer> nets = pack.sources().stream()
                    .flatMap(source -> List.of(source.from(), source.to()).stream())
                    .collect(Collectors.toSet());
            assertEquals(pack.sources().size() - nets.size() + 1, pack.loops().size());
        }
    }

    @Property(tries = 200, seed = "29112026")
    void nets_ofANetlist_areNoFinerThanThoseOfItsLinks(@ForAll Random random) {
        Scenario scenario = new RandomScenarios(random, CATALOGUE).scenario();
        Nets byLinks = Nets.of(scenario, link -> true);
        Netlist netlist = held(scenario);
        for (int net = 0; net < byLinks.size(); net++) {
            List<TerminalRef> joined = byLinks.members(net);
            assertTrue(joined.stream().allMatch(it -> netlist.net(it) == netlist.net(joined.get(0))));
        }
    }

    private static Netlist held(Scenario scenario) {
        Predicate<Part> conducts = part -> part.kind() != PartKind.METER;
        return Netlist.of(scenario, Nets.of(scenario, link -> true), conducts);
    }

    private static Set<Set<String>> packs(Netlist netlist, Map<String, String> names) {
        return netlist.packs().stream()
                .map(pack -> parts(pack.sources(), names))
                .collect(Collectors.toSet());
    }

    private static Set<Set<String>> rows(Netlist netlist, Map<String, String> names) {
        return Rows.of(netlist).stream().map(row -> parts(row.sources(), names)).collect(Collectors.toSet());
    }

    private static Set<String> parts(List<Branch> branches, Map<String, String> names) {
        return branches.stream().map(branch -> names.get(branch.part())).collect(Collectors.toSet());
    }

    private static Map<String, String> identity(Renamed renamed) {
        return renamed.names().values().stream().collect(Collectors.toMap(name -> name, name -> name));
    }
}
