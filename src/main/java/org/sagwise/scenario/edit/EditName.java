package org.sagwise.scenario.edit;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import org.sagwise.scenario.Names;
import org.sagwise.scenario.PartName;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalName;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Texts;

/**
 * What an edit is called: a key of the texts and what fills it in.
 *
 * @param key as in {@code turn.one} or {@code turn.many}
 * @param words names of parts and terminals, or how many there are: what {@link Names#word} says
 */
public record EditName(String key, List<Object> words) {

    public EditName {
        words = List.copyOf(words);
    }

    static EditName of(String key, Object... words) {
        return new EditName(key, List.of(words));
    }

    /** An edit of some parts: the name of the one, or how many there are. */
    static EditName ofParts(String key, Scenario scenario, Collection<String> ids) {
        return ids.size() == 1
                ? of(key + ".one", partName(scenario, ids.iterator().next()))
                : of(key + ".many", String.valueOf(ids.size()));
    }

    /** Label or id of a part; where the bench has given the id, what a sentence calls the part. */
    static Object partName(Scenario scenario, String id) {
        PartName name = PartName.of(scenario, id);
        return name.isGiven() ? name : name.word();
    }

    /** What people call a terminal. */
    static TerminalName terminalName(Scenario scenario, TerminalRef terminal) {
        return TerminalName.of(scenario, terminal);
    }

    /** This name in a language, as in "Undo: turn cell B". */
    public String in(Locale locale) {
        Names names = Names.in(locale);
        return Texts.in("edits", locale)
                .say(key, words.stream().map(names::word).toArray());
    }
}
