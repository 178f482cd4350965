package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CatalogueEntry;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.report.health.Health;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.edit.SetLinkKeys;

/** Links that name a contact or a jumper of the catalogue; its numbers are read beside this in its files. */
class NamedJointsTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private static Loaded read(String joint) {
        return new ScenarioReader(CATALOGUE).read("""
                {"sagwise": 1, "parts": [
                  {"id": "A", "kind": "cell", "model": "inr18650-2500-20A", "charge": 0.9},
                  {"id": "coil", "kind": "coil", "ohm": 1}],
                 "links": [
                  {"from": "A.+", "to": "coil.1", JOINT},
                  {"from": "coil.2", "to": "A.-", "ideal": true}]}
                """.replace("JOINT", joint).getBytes(StandardCharsets.UTF_8));
    }

    private static Scenario scenario(String joint) {
        return read(joint).scenario().orElseThrow();
    }

    private static Joint joint(Scenario scenario) {
        return scenario.links().get(0).joint();
    }

    private static Finding finding(String joint) {
        List<Finding> found =
                assertInstanceOf(Loaded.Refused.class, read(joint)).findings();
        assertEquals(1, found.size(), found.toString());
        return found.get(0);
    }

    @Test
    void contact_namedByItsModel_hasItsOhms() {
        assertEquals(new Joint.Touch(8), joint(scenario("\"model\": \"spring\"")));
    }

    @Test
    void jumper_namedByItsModel_isItsWire() {
        assertEquals(new Joint.Jumper(new Joint.Awg(18), 60, 1), joint(scenario("\"model\": \"jumper-18awg-60mm\"")));
    }

    @Test
    void model_beside_theLinksOwnOhms_givesWayToThem() {
        assertEquals(new Joint.Touch(12), joint(scenario("\"model\": \"spring\", \"contact_mohm\": 12")));
    }

    @Test
    void everyContactAndJumper_isSavedAndReadAgainAsItIs() {
        List<String> ids = Stream.concat(CATALOGUE.contacts().all().stream(), CATALOGUE.jumpers().all().stream())
                .map(CatalogueEntry::id)
                .toList();
        assertTrue(ids.size() > 10, ids.toString());
        for (String id : ids) {
            Scenario once = scenario("\"model\": \"" + id + "\"");
            byte[] saved = ScenarioWriter.write(once).getBytes(StandardCharsets.UTF_8);
            assertEquals(
                    once, new ScenarioReader(CATALOGUE).read(saved).scenario().orElseThrow(), id);
            assertEquals(Optional.of(id), once.links().get(0).model());
        }
    }

    /** What is possible is told, of joints and not of parts. */
    @ParameterizedTest
    @CsvSource({"sprong, spring", "button, ''", "zzz, ''"})
    void model_thatNoJointHas_isAnsweredWithThoseThatThereAre(String id, String near) {
        Finding finding = finding("\"model\": \"" + id + "\"");
        assertEquals(Problem.UNKNOWN_MODEL, finding.problem());
        assertEquals("links[0].model", finding.place());
        assertEquals(List.of(id, near), finding.details().subList(0, 2));
        assertTrue(finding.details().get(2).startsWith("dirty, jumper-14awg-80mm, "), finding.toString());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "\"model\": \"spring\", \"ideal\": true | model, ideal",
                "\"model\": \"jumper-18awg-60mm\", \"contact_mohm\": 3 | model, contact_mohm",
                "\"model\": \"spring\", \"jumper\": {\"awg\": 18, \"length_mm\": 9} | model, jumper"
            })
    void model_besideAnotherWayOfJoining_isRefused(String joint, String clash) {
        Finding finding = finding(joint);
        assertEquals(Problem.CLASH, finding.problem());
        assertEquals(List.of(clash), finding.details());
    }

    @Test
    void joint_thatIsChangedByHand_isOfThatModelNoLonger() {
        Scenario after = new SetLinkKeys(0, Keys.of("contact_mohm", 3)).apply(scenario("\"model\": \"dirty\""));
        assertEquals(Optional.empty(), after.links().get(0).model());
        assertEquals(new Joint.Touch(3), joint(after));
    }

    @Test
    void ohms_ofANamedContact_areTheCataloguesAndNotMeasured() {
        Bench bench = Bench.of(scenario("\"model\": \"dirty\""), CATALOGUE);
        Health joint = Health.of(bench).stream()
                .filter(health -> health.links().contains(0))
                .findFirst()
                .orElseThrow();
        assertEquals(Health.Origin.CATALOGUE, joint.origin());
        assertEquals(Health.Verdict.BAD, joint.verdict());
    }
}
