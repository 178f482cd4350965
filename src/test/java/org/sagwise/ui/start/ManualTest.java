package org.sagwise.ui.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.report.figure.BenchFigure;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.start.Manual.Piece;

/** The manual says the same in both languages, and its pictures are those of the bench of today. */
class ManualTest {

    private static final Path FOLDER = Path.of("docs", "manual");
    private static final boolean WRITE = Boolean.getBoolean("sagwise.write");

    private static List<Piece> pieces(String language) {
        return Manual.in(Locale.forLanguageTag(language));
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void manual_inEachLanguage_hasTheSamePieces(String language) {
        List<Piece> own = pieces(language);
        List<Piece> english = pieces("en");
        assertEquals(
                english.stream().map(Piece::getClass).toList(),
                own.stream().map(Piece::getClass).toList());
        assertTrue(own.stream().filter(Piece.Picture.class::isInstance).count() >= 3);
    }

    /** Made anew with -Dsagwise.write=true. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void pictures_areWhatTheBenchShowsToday(String language) throws IOException {
        Locale locale = Locale.forLanguageTag(language);
        for (Piece piece : pieces(language)) {
            if (piece instanceof Piece.Picture picture) {
                Path file = FOLDER.resolve("pictures")
                        .resolve(picture.demo() + (picture.held() ? "-held." : ".") + language + ".svg");
                String now = BenchFigure.svg(bench(picture, locale), locale);
                if (WRITE) {
                    Files.createDirectories(file.getParent());
                    Files.writeString(file, now);
                }
                assertEquals(Files.readString(file), now, file.toString());
            }
        }
    }

    private static Assessment bench(Piece.Picture picture, Locale locale) {
        Scenario scenario = new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(picture.demo(), locale))
                .scenario()
                .orElseThrow();
        return Assessment.of(picture.held() ? scenario.pressed() : scenario.released(), CatalogueLoader.builtIn());
    }
}
