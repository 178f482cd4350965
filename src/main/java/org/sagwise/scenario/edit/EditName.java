package org.sagwise.scenario.edit;

import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

import java.util.Collection;
import java.util.List;

/**
 * What an edit is called: a key of the texts and what fills it in.
 *
 * @param key as in {@code turn.one} or {@code turn.many}
 * @param words names of parts, or how many there are
 */
public record EditName(String key, List<String> words) {

    public EditName {
        words = List.copyOf(words);
    }

    static EditName of(String key, String... words) {
        return new EditName(key, List.of(words));
    }

    /** An edit of some parts: the name of the one, or how many there are. */
    static EditName ofParts(String key, Scenario scenario, Collection<String> ids) {
        return ids.size() == 1
                ? of(key + ".one", partName(scenario, ids.iterator().next()))
                : of(key + ".many", String.valueOf(ids.size()));
    }

    static String partName(Scenario scenario, String id) {
        return scenario.part(id).map(Part::name).orElse(id);
    }

    /** What people call a terminal. */
    static String terminalName(Scenario scenario, TerminalRef terminal) {
        return partName(scenario, terminal.part()) + " " + terminal.terminal().replace('-', '−');
    }
}
