package org.sagwise.plan.drawer;

import static org.sagwise.part.key.KeySpec.FOREIGN;
import static org.sagwise.part.key.KeySpec.group;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.required;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.TextType;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.KeyRules;
import org.sagwise.scenario.Places;
import org.sagwise.scenario.ScenarioKeys;

/**
 * The keys of a drawer: file, table for spreadsheets, command line and window all ask these. What a
 * cell of a scenario has too is named and bounded as there.
 */
public final class DrawerKeys {

    /** The number of the format of the file. */
    public static final int FORMAT = 1;

    /** More cells than anybody keeps in one drawer. */
    public static final int MOST_CELLS = 2_000;

    /** More measurements than anybody takes of one cell. */
    public static final int MOST_MEASUREMENTS = 1_000;

    /** Day of the calendar, year first, as ISO 8601 has it. */
    private static final TextType DATE = new TextType(10);

    private static final TextType WORDS = new TextType(400);

    /** Figures of a cell that no model of the catalogue stands for. */
    public static final List<String> FIGURES =
            List.of("chemistry", "format", "capacity_mAh", "internal_mohm", "limit_A");

    /** Keys that hold a day. */
    private static final Set<String> DATES = Set.of("on", "since", "bought");

    /** A measurement. */
    public static final List<KeySpec> MEASURED = List.of(
            required("on", DATE),
            ofCell("capacity_mAh"),
            ofCell("internal_mohm"),
            ofCell("rest_V"),
            optional("week_V", ofCell("rest_V").type()),
            optional("how", WORDS),
            FOREIGN);

    /** A cell; its measurements stand in a list under {@code measured}. */
    public static final List<KeySpec> CELL = cell();

    private DrawerKeys() {}

    private static List<KeySpec> cell() {
        List<KeySpec> keys = new ArrayList<>();
        keys.add(required(
                "mark",
                PartKind.CELL.descriptor().keys().find("mark").orElseThrow().type()));
        keys.add(optional("name", ScenarioKeys.LABEL));
        keys.add(ofCell("model"));
        FIGURES.forEach(name -> keys.add(ofCell(name)));
        keys.add(optional("bought", DATE));
        keys.add(optional("married", group(required("set", ofCell("married").type()), optional("since", DATE))));
        keys.add(optional("retired", group(optional("on", DATE), optional("why", WORDS))));
        keys.add(optional("note", WORDS));
        keys.add(FOREIGN);
        return List.copyOf(keys);
    }

    private static KeySpec ofCell(String name) {
        return PartKind.CELL.descriptor().keys().find(name).orElseThrow();
    }

    /** Everything that is wrong with the keys of a cell but its measurements. */
    public static List<Finding> checkCell(Keys keys, String place, Catalogue catalogue) {
        KeyRules rules = new KeyRules(catalogue.models(PartKind.CELL).ids(), Set.of());
        List<String> known = new ArrayList<>(CELL.stream().map(KeySpec::name).toList());
        known.add("measured");
        List<Finding> found = new ArrayList<>(rules.check(keys.without("measured"), CELL, place, known));
        if (found.isEmpty()) {
            checkText(keys, "mark", place, found);
            checkDate(keys, "bought", place, found);
            keys.group("married").ifPresent(inner -> {
                checkText(inner, "set", Places.key(place, "married"), found);
                checkDate(inner, "since", Places.key(place, "married"), found);
            });
            keys.group("retired").ifPresent(inner -> checkDate(inner, "on", Places.key(place, "retired"), found));
        }
        return found;
    }

    /** Everything that is wrong with the keys of a measurement. */
    public static List<Finding> checkMeasured(Keys keys, String place) {
        List<Finding> found = new ArrayList<>(new KeyRules(Set.of(), Set.of()).check(keys, MEASURED, place));
        if (found.isEmpty()) {
            checkDate(keys, "on", place, found);
            if (found.isEmpty() && !CellMeasurement.of(keys).saysAnything()) {
                found.add(Finding.of(place, DrawerProblem.NOTHING_MEASURED));
            }
        }
        return found;
    }

    private static void checkText(Keys keys, String name, String place, List<Finding> found) {
        String text = keys.text(name).orElse("");
        if (text.isBlank() || !text.equals(text.strip())) {
            found.add(Finding.of(Places.key(place, name), DrawerProblem.BLANK));
        }
    }

    private static void checkDate(Keys keys, String name, String place, List<Finding> found) {
        keys.text(name)
                .filter(text -> parseDate(text).isEmpty())
                .ifPresent(text -> found.add(Finding.of(Places.key(place, name), DrawerProblem.BAD_DATE, text)));
    }

    /** A day as ISO 8601 writes it, {@code 2026-11-30}; empty for anything else. */
    public static Optional<LocalDate> parseDate(String text) {
        try {
            LocalDate date = LocalDate.parse(text);
            return date.getYear() >= 1900 && date.getYear() <= 2999 ? Optional.of(date) : Optional.empty();
        } catch (DateTimeException other) {
            return Optional.empty();
        }
    }

    static Optional<LocalDate> date(Keys keys, String name) {
        return keys.text(name).flatMap(DrawerKeys::parseDate);
    }

    /** What is left of a number when the noise of a change of unit is taken off. */
    static double written(double value) {
        return new BigDecimal(value).round(new MathContext(12)).doubleValue();
    }
}
