package org.sagwise.reading;

import java.util.Set;

/**
 * What lets nothing through any more although the scenario joins it: time has melted it or it has
 * switched itself off.
 *
 * @param coils ids of the coils that have melted
 * @param links places of the jumpers that have melted
 * @param stopped ids of the boards and chargers that have switched off
 */
public record Broken(Set<String> coils, Set<Integer> links, Set<String> stopped) {

    public static final Broken NOTHING = new Broken(Set.of(), Set.of(), Set.of());

    public Broken {
        coils = Set.copyOf(coils);
        links = Set.copyOf(links);
        stopped = Set.copyOf(stopped);
    }
}
