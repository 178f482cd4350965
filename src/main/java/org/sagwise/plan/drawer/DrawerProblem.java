package org.sagwise.plan.drawer;

import java.util.List;
import java.util.Locale;
import org.sagwise.scenario.Fault;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.ProblemTexts;
import org.sagwise.text.Texts;

/** What can be wrong with a drawer, its file or its table, beside what a scenario can have wrong too. */
public enum DrawerProblem implements Fault {
    NO_FORMAT,
    NEWER_FORMAT,
    NO_CELLS,
    TOO_MANY_CELLS,
    TOO_MANY_MEASUREMENTS,
    BAD_DATE,
    BLANK,
    DUPLICATE_MARK,
    UNKNOWN_MARK,
    NOTHING_MEASURED,
    SET_OF_ONE,
    SET_TAKEN,
    MARRIED_ALREADY,
    RETIRED_CELL,
    CHANGED_MEANWHILE,
    COPY_THERE,
    NO_TABLE,
    UNKNOWN_COLUMN,
    COLUMN_TWICE,
    MISSING_COLUMN,
    TOO_MANY_FIELDS,
    OPEN_QUOTE,
    STRAY_QUOTE,
    NOT_A_NUMBER,
    CONFLICT,
    NEEDS_DATE;

    @Override
    public String bundle() {
        return "drawer-problems";
    }

    @Override
    public String sentence(String place, List<String> details, Locale locale) {
        return Texts.in(bundle(), locale)
                .say(key(), details.stream().map(ProblemTexts::shown).toArray());
    }

    /** A finding about a mark that is not in a drawer, with the one that was probably meant. */
    static String near(String mark, List<String> known) {
        return Places.near(mark, known);
    }
}
