package org.sagwise.ui.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Languages;

/** The benches that come with the program. */
public final class ExampleBenches {

    private ExampleBenches() {}

    /** All of them, in the order in which a newcomer may want to look at them. */
    public static List<Example> all(ScenarioReader reader) {
        return DemoScenarios.names().stream().map(name -> read(name, reader)).toList();
    }

    /** The one of a name, such as {@link DemoScenarios#OPENING}, which a window opens with. */
    public static Optional<Example> named(String name, List<Example> all) {
        return all.stream().filter(each -> each.name().equals(name)).findFirst();
    }

    /** The example that lies on the bench as it came, if one does. */
    public static Optional<Example> untouched(Scenario present, List<Example> all) {
        return all.stream().filter(each -> each.is(present)).findFirst();
    }

    private static Example read(String name, ScenarioReader reader) {
        Map<String, Scenario> byLanguage = new LinkedHashMap<>();
        Languages.locales().forEach(locale -> byLanguage.put(locale.getLanguage(), read(name, locale, reader)));
        return new Example(name, byLanguage);
    }

    private static Scenario read(String name, Locale locale, ScenarioReader reader) {
        Loaded loaded = reader.read(DemoScenarios.bytes(name, locale));
        return loaded.scenario()
                .orElseThrow(() -> new IllegalStateException(
                        name + " was broken when the program was built: " + loaded.findings()));
    }
}
