package org.sagwise.picture.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.PartKind;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/** What stands beside a part is what holds for it, whoever says it. */
class CaptionsTest {

    @ParameterizedTest
    @CsvSource({"model, fuse-10A, 10.0 A", "rating_A, 7.5, 7.50 A"})
    void of_fuse_showsItsRating(String key, String value, String shown) {
        Object said = key.equals("model") ? value : Double.valueOf(value);
        Scenario fuse = Scenario.of("Fuse", List.of(Part.of("f", PartKind.FUSE, key, said)), List.of());
        BenchScene scene = BenchScene.of(
                Assessment.of(fuse, CatalogueLoader.builtIn()), BenchLayout.of(fuse), Theme.LIGHT, Locale.ENGLISH);

        Caption caption = new Captions(scene).of(scene.layout().part("f").orElseThrow());

        assertEquals(shown, caption.rows().get(0).pieces().get(1).text().replaceAll("\\p{Z}", " "));
    }
}
