package org.sagwise.report;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.ScenarioReader;
import org.sagwise.file.ShareText;
import org.sagwise.part.Catalogue;
import org.sagwise.report.explain.Explanation;
import org.sagwise.report.post.Block;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** Invented stories of a forum, and the posts that explain them. */
final class Stories {

    static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    static final List<String> NAMES = List.of("reversed-in-parallel", "new-and-worn-in-series", "thin-jumpers");

    private Stories() {}

    static Scenario story(String name) {
        Path file = Path.of("src/test/resources/stories", name + ".sagwise.json");
        return new ScenarioReader(CATALOGUE).read(file).scenario().orElseThrow();
    }

    static Scenario read(String json) {
        return new ScenarioReader(CATALOGUE)
                .read(json.getBytes(StandardCharsets.UTF_8))
                .scenario()
                .orElseThrow();
    }

    static String post(Scenario scenario, PostFormat format, Locale locale, Signs signs) {
        Assessment assessment = Assessment.of(scenario, CATALOGUE);
        Optional<Cure> cure = Cure.of(assessment);
        List<Block> blocks = Explanation.of(
                assessment,
                new Explanation.Materials(
                        assessment,
                        ShareText.of(scenario),
                        cure,
                        cure.flatMap(it -> ShareText.of(it.after().scenario())),
                        List.of()),
                locale,
                signs);
        return format.write(blocks, locale, signs);
    }

    static String text(String story) {
        return post(story(story), PostFormat.TEXT, Locale.ENGLISH, Signs.PRINT).replaceAll("\\s+", " ");
    }
}
