package org.sagwise.scenario;

import java.util.List;

/**
 * One thing that is wrong with a scenario, with its place.
 *
 * @param place where, as a path such as {@code parts[2].internal_mohm}; empty for the whole file
 * @param problem what
 * @param details what fills the blanks of the problem's text, in order
 */
public record Finding(String place, Problem problem, List<String> details) {

    public Finding {
        details = List.copyOf(details);
    }

    public static Finding of(String place, Problem problem, String... details) {
        return new Finding(place, problem, List.of(details));
    }
}
