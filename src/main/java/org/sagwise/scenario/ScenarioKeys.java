package org.sagwise.scenario;

import static org.sagwise.part.key.KeySpec.FOREIGN;
import static org.sagwise.part.key.KeySpec.choiceElse;
import static org.sagwise.part.key.KeySpec.from;
import static org.sagwise.part.key.KeySpec.optional;
import static org.sagwise.part.key.KeySpec.required;
import static org.sagwise.part.key.KeySpec.whole;

import java.util.List;
import java.util.Optional;
import org.sagwise.part.MeterMode;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.KeyRule;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.KeySpec.CatalogueType;
import org.sagwise.part.key.KeySpec.FlagType;
import org.sagwise.part.key.KeySpec.GroupType;
import org.sagwise.part.key.KeySpec.Shelf;
import org.sagwise.part.key.KeySpec.TerminalType;
import org.sagwise.part.key.KeySpec.TextType;

/** The keys of a scenario file outside its parts: whole file, links, probes, notes, placement. */
public final class ScenarioKeys {

    /** The number of the file format that this program writes. */
    public static final int FORMAT = 1;

    /** Temperature around the bench where a file says none, °C. */
    public static final double AMBIENT_C = 25;

    /** Most parts a scenario may have. */
    public static final int MOST_PARTS = 2_000;

    /** Most links a scenario may have. */
    public static final int MOST_LINKS = 4_000;

    /** More notes than anybody reads on one bench; each is laid beside all others. */
    public static final int MOST_NOTES = 200;

    /** What an id may look like: letters, digits, {@code -}, {@code _}; 1 to 32 of them. */
    public static final String ID_PATTERN = "[A-Za-z0-9_-]{1,32}";

    /** Keys of the whole file in the order in which we write them. */
    public static final List<String> TOP_ORDER = List.of(
            "sagwise", "title", "about", "ambient_C", "parts", "links", "fired", "probes", "notes", "placement", "x");

    public static final TextType TITLE = new TextType(200);
    public static final TextType ABOUT = new TextType(20_000);
    public static final TextType LABEL = new TextType(60);
    public static final KeySpec.NumberType AMBIENT = from(-60, 150, AMBIENT_C);

    /** Keys of the whole file that hold a single value. */
    static final List<KeySpec> TOP = List.of(
            optional("title", TITLE),
            optional("about", ABOUT),
            optional("ambient_C", AMBIENT),
            optional("fired", new FlagType(Optional.of(false))),
            FOREIGN);

    /** Keys that every part may have, besides those of its kind. */
    public static final List<KeySpec> ANY_PART = List.of(
            required("id", new TextType(32)),
            required("kind", KeySpec.choice(PartKind.words().toArray(String[]::new))),
            optional("label", LABEL),
            FOREIGN);

    public static final GroupType JUMPER = KeySpec.group(
            List.of(KeyRule.exactlyOne("awg", "diameter_mm", "area_mm2")),
            optional("awg", whole(0, 50)),
            optional("diameter_mm", from(0.001, 50)),
            optional("area_mm2", from(1e-6, 1_000)),
            required("length_mm", from(0, 1e6)),
            optional("material", choiceElse("copper", "copper")),
            optional("contacts_mohm", from(0, 1e9, 0)));

    public static final List<KeySpec> LINK = List.of(
            optional("id", new TextType(32)),
            required("from", new TerminalType()),
            required("to", new TerminalType()),
            optional("model", new CatalogueType(Shelf.MODEL)),
            optional("ideal", new FlagType(Optional.empty())),
            optional("contact_mohm", from(0, 1e9)),
            optional("jumper", JUMPER),
            FOREIGN);

    /** Keys of a link that say how its ends are joined. */
    public static String[] joint() {
        return new String[] {"model", "ideal", "contact_mohm", "jumper"};
    }

    static final List<KeyRule> LINK_RULES = List.of(KeyRule.oneOrModel("ideal", "contact_mohm", "jumper"));

    public static final List<KeySpec> PROBES = List.of(
            required("red", new TerminalType()),
            required("black", new TerminalType()),
            optional(MeterMode.KEY, choiceElse("volts", MeterMode.words())),
            FOREIGN);

    public static final TextType NOTE_TEXT = new TextType(4_000);
    public static final KeySpec.NumberType NOTE_AWAY = from(-10_000, 10_000);

    /**
     * A note; {@code on} names a part, or a link by its id. Where it was laid: grid units to the
     * right of the middle of that, and below it.
     */
    public static final List<KeySpec> NOTE = List.of(
            required("on", new TextType(65)),
            required("text", NOTE_TEXT),
            optional("dx", NOTE_AWAY),
            optional("dy", NOTE_AWAY),
            FOREIGN);

    /** Where a part lies: grid units from the left and the top, degrees clockwise. */
    public static final List<KeySpec> PLACEMENT = List.of(
            required("x", from(-10_000, 10_000)),
            required("y", from(-10_000, 10_000)),
            optional("turn", from(-360, 360, 0)));

    private ScenarioKeys() {}
}
