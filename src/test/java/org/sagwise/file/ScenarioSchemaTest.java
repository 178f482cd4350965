package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.EnumSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.part.Catalogue;
import org.sagwise.scenario.Problem;

/** The published schema and our own rules agree, as far as a schema can say what we know. */
class ScenarioSchemaTest {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();
    private static final Schema SCHEMA = load();

    /** What no schema can say: it knows neither other parts, nor the catalogue, nor bytes. */
    private static final Set<Problem> BEYOND_A_SCHEMA = EnumSet.of(
            Problem.DUPLICATE_KEY,
            Problem.DUPLICATE_ID,
            Problem.UNKNOWN_MODEL,
            Problem.UNKNOWN_ALLOY,
            Problem.UNKNOWN_PART,
            Problem.UNKNOWN_TERMINAL,
            Problem.SELF_LINK,
            Problem.UPSIDE_DOWN,
            Problem.NOTE_ON_NOTHING,
            Problem.PLACEMENT_OF_NOTHING);

    /** What a validator never gets to see. */
    private static final Set<Problem> BEFORE_A_SCHEMA =
            EnumSet.of(Problem.NOT_JSON, Problem.NOT_UTF8, Problem.TOO_DEEP);

    static List<String> demos() {
        return DemoScenarios.names();
    }

    @ParameterizedTest
    @MethodSource("demos")
    void validate_demo_passes(String demo) {
        String text = new String(DemoScenarios.bytes(demo), StandardCharsets.UTF_8);
        assertEquals(List.of(), SCHEMA.validate(text, InputFormat.JSON));
    }

    @Property(tries = 300)
    void validate_randomScenario_passes(@ForAll Random random) {
        String text = ScenarioWriter.write(new RandomScenarios(random, CATALOGUE).scenario());
        assertEquals(List.of(), SCHEMA.validate(text, InputFormat.JSON));
    }

    static List<Defect> broken() throws IOException {
        return Defect.all();
    }

    @ParameterizedTest
    @MethodSource("broken")
    void validate_brokenFile_failsWhereASchemaCan(Defect defect) throws IOException {
        byte[] bytes = defect.file();
        Set<Problem> problems = EnumSet.noneOf(Problem.class);
        new ScenarioReader(CATALOGUE).read(bytes).findings().forEach(found -> problems.add((Problem) found.problem()));
        if (problems.stream().anyMatch(BEFORE_A_SCHEMA::contains)) {
            return;
        }
        List<Error> errors = SCHEMA.validate(read(bytes));
        if (BEYOND_A_SCHEMA.containsAll(problems)) {
            assertEquals(List.of(), errors);
        } else {
            assertNotEquals(List.of(), errors, problems.toString());
        }
    }

    private static JsonNode read(byte[] bytes) {
        try {
            return new ObjectMapper().readTree(new String(bytes, StandardCharsets.UTF_8));
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Schema load() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(Files.readString(ScenarioSchema.FILE));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
