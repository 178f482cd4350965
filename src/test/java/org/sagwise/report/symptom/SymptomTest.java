package org.sagwise.report.symptom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.run.UsualRun;
import org.sagwise.text.Languages;
import org.sagwise.text.Signs;

/** What people write, and what in a bench explains it. */
class SymptomTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    /** Two cells in a row on a coil, a thing about each of them to be filled in. */
    private static final String ROW = """
            {"sagwise": 1, "parts": [
              {"id": "A", "kind": "cell", "model": "inr18650-2500-20A", "charge": 0.9},
              {"id": "B", "kind": "cell", "model": "inr18650-2500-20A", "charge": 0.9 CELL},
              {"id": "fire", "kind": "switch", "closed_mohm": 3 BUTTON},
              {"id": "left", "kind": "coil", "ohm": 2 COIL},
              {"id": "right", "kind": "coil", "ohm": 2}],
             "links": [
              {"from": "A.-", "to": "B.+", "contact_mohm": 4},
              {"from": "A.+", "to": "fire.1", "contact_mohm": 4 WAY},
              {"from": "fire.2", "to": "left.1", "contact_mohm": 4 LEFT},
              {"from": "fire.2", "to": "right.1", "contact_mohm": 4},
              {"from": "left.2", "to": "B.-", "contact_mohm": 4},
              {"from": "right.2", "to": "B.-", "contact_mohm": 4}]}
            """;

    private static Evidence evidence(byte[] json) {
        var scenario = new ScenarioReader(CATALOGUE).read(json).scenario().orElseThrow();
        Assessment assessment = Assessment.of(scenario, CATALOGUE).lookingAhead();
        return Evidence.of(assessment, UsualRun.of(assessment.bench()));
    }

    /** The row with something changed: {@code CELL=, "health": 0.5}. */
    private static Evidence row(String change) {
        String json = ROW;
        for (String place : new String[] {"CELL", "BUTTON", "COIL", "WAY", "LEFT"}) {
            String own = change.startsWith(place + "=") ? change.substring(place.length() + 1) : "";
            json = json.replace(" " + place, own);
        }
        return evidence(json.replace("4, \"contact_mohm\": ", "").getBytes(StandardCharsets.UTF_8));
    }

    private static Optional<String> cause(Symptom symptom, Evidence evidence) {
        return symptom.causes().stream()
                .filter(cause -> cause.sign().apply(evidence).isPresent())
                .map(Cause::id)
                .findFirst();
    }

    @ParameterizedTest
    @EnumSource(Symptom.class)
    void meantBy_itsOwnTitle_isItInEveryLanguage(Symptom symptom) {
        for (Locale locale : Languages.locales()) {
            assertEquals(Optional.of(symptom), Symptom.meantBy(symptom.title(locale)), symptom.title(locale));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "One side hardly glows since I changed the wire | UNEVEN_GLOW",
                "only one of the two coils gets warm, the other coil stays dark | UNEVEN_GLOW",
                "Die zweite Wicklung glüht kaum | UNEVEN_GLOW",
                "it just cuts out at half | CUTS_OUT",
                "Geht mitten drin einfach aus | CUTS_OUT",
                "my batteries get really hot | HOT_CELL",
                "Akkus werden richtig heiß | HOT_CELL",
                "the new cells don't last | SHORT_LIFE",
                "hält nicht lange | SHORT_LIFE",
                "empty overnight and I did not touch it | DRAINS",
                "feels weak, hardly warm | WEAK",
                "der Taster klemmt manchmal und feuert weiter | FIRES_ALONE",
                "the spring got so hot that it melted | HOT_JOINT",
                "Kabel riecht komisch und wird heiß | HOT_WIRE",
                "dead, nothing happens at all | NOTHING",
                "voltage collapses when I press | SAGS",
                "fuse blows every time | FUSE_OPENS",
            })
    void meantBy_whatPeopleWrite_isTheSymptom(String words, Symptom symptom) {
        assertEquals(Optional.of(symptom), Symptom.meantBy(words));
    }

    @ParameterizedTest
    @CsvSource({"smells of pineapple", "it is blue", "'   '", "schmeckt nach Ananas"})
    void meantBy_otherWords_isNone(String words) {
        assertEquals(Optional.empty(), Symptom.meantBy(words));
    }

    /** Each change of a sound row, and what it brings about. Nothing of it is found in the sound row. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "LEFT=, \"contact_mohm\": 400 | UNEVEN_GLOW | coil-joint",
                "COIL=.9 | UNEVEN_GLOW | coil-ohms",
                "WAY=, \"contact_mohm\": 200 | WEAK | joint",
                "WAY=, \"contact_mohm\": 200 | HOT_JOINT | joint",
                "WAY=, \"contact_mohm\": 200 | FLICKERS | joint",
                "CELL=, \"health\": 0.6 | UNEVEN_CELLS | unequal",
                "CELL=, \"health\": 0.6 | SHORT_LIFE | weakest",
                "BUTTON=, \"stuck\": \"open\" | NOTHING | open",
                "BUTTON=, \"stuck\": \"closed\" | FIRES_ALONE | stuck",
                "BUTTON=, \"stuck\": \"closed\" | DRAINS | stuck",
                "CELL=, \"temperature_C\": -15 | WEAK | cold",
                "CELL=, \"claimed_A\": 40 | SHORT_LIFE | claims",
            })
    void causes_ofAChangedRow_areFoundAndNotInTheSoundOne(String change, Symptom symptom, String cause) {
        assertEquals(Optional.of(cause), cause(symptom, row(change)));
        assertFalse(cause(symptom, row("")).filter(cause::equals).isPresent(), "in the sound row");
    }

    @ParameterizedTest
    @CsvSource({
        "side-by-side-one-reversed, HOT_CELL, ring",
        "side-by-side-one-reversed, DRAINS, ring",
        "row-of-two-one-reversed, NOTHING, reversed-row",
        "row-of-two-one-reversed, WRONG_VOLTS, reversed-row",
        "paper-clip-across-the-coil, HOT_WIRE, bypassed",
        "thin-wire, HOT_WIRE, wire",
        "protected-pair-asked-too-much, CUTS_OUT, guard",
        "fuse-that-comes-back, CUTS_OUT, ptc",
        "too-few-ohms, HOT_CELL, over-limit",
        "meter-left-on-amps, METER_ODD, meter",
        "re-wrapped-cell, SHORT_LIFE, claims",
        "old-and-new-in-a-row, UNEVEN_CELLS, unequal",
        "regulated-board, SHORT_LIFE, by-design",
    })
    void causes_ofADemo_areFound(String demo, Symptom symptom, String cause) {
        assertEquals(Optional.of(cause), cause(symptom, evidence(DemoScenarios.bytes(demo, Locale.ENGLISH))));
    }

    /** The board of a pack of weak cells gives up with half of the charge left. */
    @Test
    void answer_cutsOutAtHalf_saysWhenAndWithHowMuchLeft() {
        String json = """
                {"sagwise": 1, "parts": [
                  {"id": "A", "kind": "cell", "charge": 1, "internal_mohm": 90, "capacity_mAh": 2600, "limit_A": 10},
                  {"id": "fire", "kind": "switch", "closed_mohm": 3},
                  {"id": "board", "kind": "board", "power_W": 25, "cutoff_V": 2.9},
                  {"id": "coil", "kind": "coil", "ohm": 0.6}],
                 "links": [
                  {"from": "A.+", "to": "fire.1", "contact_mohm": 4},
                  {"from": "fire.2", "to": "board.in+", "contact_mohm": 4},
                  {"from": "board.in-", "to": "A.-", "contact_mohm": 4},
                  {"from": "board.out+", "to": "coil.1", "contact_mohm": 4},
                  {"from": "board.out-", "to": "coil.2", "contact_mohm": 4}]}
                """;
        SymptomAnswer answer = SymptomAnswer.to(
                "it cuts out at half", evidence(json.getBytes(StandardCharsets.UTF_8)), Locale.ENGLISH, Signs.PRINT);
        assertTrue(answer.cause().contains("fits this bench"), answer.cause());
        assertTrue(answer.cause().matches(".*after \\d+ .*\\d+ %.*"), answer.cause());
    }

    @Test
    void answer_symptomThatTheBenchDoesNotExplain_saysSoAndNamesUsualCauses() {
        SymptomAnswer answer = SymptomAnswer.to("one side hardly glows", row(""), Locale.ENGLISH, Signs.PRINT);
        assertTrue(answer.cause().contains("no number of this bench explains it"), answer.cause());
        assertTrue(answer.cause().contains("a loose joint at one coil"), answer.cause());
        assertTrue(answer.test().isPresent());
    }

    @Test
    void answer_benchThatCouldHurt_neverAsksToPressIt() {
        for (Symptom symptom : Symptom.values()) {
            for (Locale locale : Languages.locales()) {
                SymptomAnswer answer = SymptomAnswer.to(
                        symptom.title(locale),
                        evidence(DemoScenarios.bytes("too-few-ohms", Locale.ENGLISH)),
                        locale,
                        Signs.PRINT);
                String test = answer.test().orElseThrow();
                assertTrue(test.startsWith("Do not press it") || test.startsWith("Nicht drücken"), test);
            }
        }
    }
}
