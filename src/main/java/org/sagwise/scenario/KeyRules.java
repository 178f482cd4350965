package org.sagwise.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.CatalogueType;
import org.sagwise.part.key.KeySpec.ChoiceType;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeySpec.ForeignType;
import org.sagwise.part.key.KeySpec.GroupType;
import org.sagwise.part.key.KeySpec.NumberType;
import org.sagwise.part.key.KeySpec.TerminalType;
import org.sagwise.part.key.KeySpec.TextType;
import org.sagwise.part.key.Keys;

/** Holds the keys of one object against their table: names, presence, types, ranges. */
public final class KeyRules {

    /** For objects in which no key names an entry of the catalogue. */
    public static final KeyRules WITHOUT_CATALOGUE = new KeyRules(Set.of(), Set.of());

    private final Set<String> models;
    private final Set<String> alloys;

    /**
     * @param models catalogue ids that a {@code model} key may name here
     * @param alloys catalogue ids that an {@code alloy} key may name
     */
    public KeyRules(Set<String> models, Set<String> alloys) {
        this.models = models;
        this.alloys = alloys;
    }

    /** Everything that is wrong with the keys of an object that stands at a place. */
    public List<Finding> check(Keys keys, List<KeySpec> specs, String place) {
        return check(keys, specs, place, specs.stream().map(KeySpec::name).toList());
    }

    /**
     * Everything that is wrong with the keys of an object that stands at a place.
     *
     * @param known keys that may stand here, checked by the specs or elsewhere
     */
    public List<Finding> check(Keys keys, List<KeySpec> specs, String place, List<String> known) {
        List<Finding> found = new ArrayList<>();
        for (String name : keys.names()) {
            if (found.size() >= ScenarioRules.MOST_FINDINGS) {
                return found;
            }
            if (!known.contains(name)) {
                found.add(Finding.of(
                        Places.key(place, name),
                        Problem.UNKNOWN_KEY,
                        name,
                        Places.near(name, known),
                        String.join(", ", known)));
            }
        }
        for (KeySpec spec : specs) {
            if (keys.has(spec.name())) {
                found.addAll(value(keys.values().get(spec.name()), spec, Places.key(place, spec.name())));
            } else if (spec.need() == KeySpec.Need.REQUIRED) {
                found.add(Finding.of(place, Problem.MISSING_KEY, spec.name(), wanted(spec.type())));
            }
        }
        return found;
    }

    private List<Finding> value(Object value, KeySpec spec, String place) {
        KeySpec.Type type = spec.type();
        if (type instanceof NumberType number) {
            return value instanceof Double given ? number(given, number, place) : wrong(place, type, value);
        } else if (type instanceof FlagType) {
            return value instanceof Boolean ? List.of() : wrong(place, type, value);
        } else if (type instanceof GroupType group) {
            return value instanceof Keys keys ? check(keys, group.keys(), place) : wrong(place, type, value);
        } else if (type instanceof ForeignType) {
            return value instanceof Map || value instanceof Keys ? List.of() : wrong(place, type, value);
        }
        return value instanceof String text ? text(text, type, place) : wrong(place, type, value);
    }

    private static List<Finding> wrong(String place, KeySpec.Type type, Object value) {
        return List.of(Finding.of(place, Problem.WRONG_TYPE, wanted(type), Places.typeOf(value)));
    }

    /** The word for a type in the details of a finding. */
    private static String wanted(KeySpec.Type type) {
        if (type instanceof NumberType) {
            return "number";
        } else if (type instanceof FlagType) {
            return "flag";
        }
        return type instanceof GroupType || type instanceof ForeignType ? "object" : "text";
    }

    private List<Finding> text(String text, KeySpec.Type type, String place) {
        if (type instanceof TextType limit && text.length() > limit.longest()) {
            return List.of(Finding.of(
                    place, Problem.TOO_LONG, String.valueOf(text.length()), String.valueOf(limit.longest())));
        } else if (type instanceof ChoiceType choice && !choice.choices().contains(text)) {
            return List.of(Finding.of(place, Problem.NOT_A_CHOICE, text, String.join(", ", choice.choices())));
        } else if (type instanceof TerminalType && TerminalRef.parse(text).isEmpty()) {
            return List.of(Finding.of(place, Problem.BAD_TERMINAL, text));
        } else if (type instanceof CatalogueType catalogue) {
            return catalogued(text, catalogue, place);
        }
        return List.of();
    }

    private List<Finding> catalogued(String id, CatalogueType type, String place) {
        boolean alloy = type.shelf() == KeySpec.Shelf.ALLOY;
        Set<String> ids = alloy ? alloys : models;
        return ids.contains(id)
                ? List.of()
                : List.of(Finding.of(
                        place,
                        alloy ? Problem.UNKNOWN_ALLOY : Problem.UNKNOWN_MODEL,
                        id,
                        Places.near(id, ids),
                        String.join(", ", ids.stream().sorted().toList())));
    }

    private static List<Finding> number(double value, NumberType type, String place) {
        if (!Double.isFinite(value)) {
            return List.of(Finding.of(place, Problem.NOT_FINITE));
        } else if (!type.allows(value)) {
            boolean whole = type.grain() == KeySpec.Grain.WHOLE && value != Math.rint(value);
            return List.of(Finding.of(
                    place,
                    whole ? Problem.NOT_WHOLE : Problem.OUT_OF_RANGE,
                    Places.plain(value),
                    Places.plain(type.least()),
                    Places.plain(type.most()),
                    type.bound() == KeySpec.Bound.EXCLUDED ? "above" : "from"));
        }
        return List.of();
    }
}
