package org.sagwise.ui.demo;

import org.sagwise.file.DemoScenarios;
import org.sagwise.file.Loaded;
import org.sagwise.file.ScenarioReader;

import java.util.List;

/** The benches that come with the program. */
public final class Examples {

    private Examples() {}

    /** All of them, in the order in which a newcomer may want to look at them. */
    public static List<Example> all(ScenarioReader reader) {
        return DemoScenarios.names().stream().map(name -> read(name, reader)).toList();
    }

    /** The one that the window opens with. */
    public static Example opening(List<Example> all) {
        return all.stream()
                .filter(each -> each.name().equals(DemoScenarios.OPENING))
                .findFirst()
                .orElseThrow();
    }

    private static Example read(String name, ScenarioReader reader) {
        Loaded loaded = reader.read(DemoScenarios.bytes(name));
        return new Example(
                name,
                loaded.scenario()
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                name
                                                        + " was broken when the program was built: "
                                                        + loaded.findings())));
    }
}
