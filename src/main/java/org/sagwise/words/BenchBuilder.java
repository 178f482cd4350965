package org.sagwise.words;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;
import org.sagwise.text.Texts;

/** Builds the bench of a recipe: cells as plates in a row, and one loop through everything else. */
final class BenchBuilder {

    private static final List<PartKind> IN_LINE =
            List.of(PartKind.FUSE, PartKind.PTC, PartKind.REVERSE_GUARD, PartKind.SWITCH);

    private final Locale locale;
    private final Recipe recipe;
    private final Catalogue catalogue;
    private final CellMaker cells;
    private final Set<Assumed> assumed = new LinkedHashSet<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Link> links = new ArrayList<>();
    private final List<Slot> slots = new ArrayList<>();

    /**
     * @param locale language of labels
     */
    BenchBuilder(Recipe recipe, Catalogue catalogue, Locale locale) {
        this.locale = locale;
        this.recipe = recipe;
        this.catalogue = catalogue;
        this.cells = new CellMaker(catalogue);
    }

    /**
     * What decides how a joint is.
     *
     * @param role what kind of joint it is
     * @param place where a wire or a charger's clip is; empty for others
     * @param index which cell or coil, from 0; -1 for others
     */
    record Slot(Role role, String place, int index) {}

    /** Kinds of joint, by what decides them. */
    enum Role {
        /** Any two things of the pack that touch. */
        CONTACT,
        /** The joint of one cell towards plus. */
        CELL,
        /** The joint of one coil. */
        COIL,
        /** Two coils in one screw. */
        POST,
        /** A wire, or the joint in its place. */
        WIRE,
        /** A clip of the charger. */
        CHARGER,
        /** The ends of what shorts. */
        CLIP
    }

    /** What decides each joint, in the order of the links. */
    List<Slot> slots() {
        return slots;
    }

    /** What the recipe did not say. */
    List<Assumed> assumed() {
        return List.copyOf(assumed);
    }

    Scenario build() {
        if (recipe.layout().isEmpty()) {
            assumed.add(Assumed.of("one-cell"));
        }
        for (int cell = 0; cell < recipe.count(); cell++) {
            Keys said = CellMaker.over(recipe.cells(), recipe.own().getOrDefault(cell, Keys.NONE));
            parts.add(part(letter(cell), PartKind.CELL, cells.made(said)));
        }
        assumed.addAll(cells.assumed());
        guards();
        pack();
        loop();
        shorts();
        Scenario bench = Scenario.of("", parts, links);
        bench = recipe.ambientC().isPresent()
                ? bench.withAmbientC(recipe.ambientC().get())
                : bench;
        return recipe.isHeld() ? bench.pressed() : bench;
    }

    static String letter(int cell) {
        return String.valueOf((char) ('A' + cell));
    }

    /** A part under its name, with a label where the language has another word for it than the file. */
    private Part part(String id, PartKind kind, Keys keys) {
        Part part = Part.of(id, kind);
        String key = "label." + kind.word();
        Texts texts = Texts.in("words", locale);
        if (texts.has(key) && !texts.say(key).isEmpty()) {
            part = part.with(
                    "label", texts.say(key) + id.substring(kind.word().length()).replace('-', ' '));
        }
        for (var entry : keys.values().entrySet()) {
            part = part.with(entry.getKey(), entry.getValue());
        }
        return part;
    }

    private boolean guardsEach() {
        return recipe.single().containsKey(PartKind.REVERSE_GUARD) && recipe.guards() == Recipe.Guards.BEHIND_EACH_CELL;
    }

    private Keys guard() {
        Keys said = recipe.single().get(PartKind.REVERSE_GUARD);
        if (said.has("model") || said.has("rating_A")) {
            return said;
        }
        String model = said.text("type").equals(Optional.of("diode")) ? "guard-schottky" : "guard-mosfet";
        assumed.add(Assumed.of("model", Assumed.Detail.of(model)));
        Keys keys = Keys.of("model", model);
        for (var entry : said.without("type").values().entrySet()) {
            keys = keys.with(entry.getKey(), entry.getValue());
        }
        return keys;
    }

    private void guards() {
        for (int cell = 0; guardsEach() && cell < recipe.count(); cell++) {
            String id = guardId(cell);
            parts.add(part(id, PartKind.REVERSE_GUARD, guard()));
            contact(pole(cell, true), new TerminalRef(id, "in"));
        }
    }

    static String guardId(int cell) {
        return "guard-" + letter(cell);
    }

    /** The end of a cell that looks to the pack's plus, or to its minus, without its guard. */
    private TerminalRef pole(int cell, boolean up) {
        return new TerminalRef(letter(cell), up != recipe.reversed().contains(cell) ? "+" : "-");
    }

    private TerminalRef upper(int cell) {
        return guardsEach() ? new TerminalRef(guardId(cell), "out") : pole(cell, true);
    }

    private TerminalRef lower(int cell) {
        return pole(cell, false);
    }

    private double contactMohm() {
        if (recipe.contactMohm().isEmpty() && !recipe.isIdeal()) {
            double usual = Usual.contactMohm(catalogue);
            assumed.add(Assumed.of("contacts", Assumed.Detail.of(usual / 1000, Unit.OHM)));
            return usual;
        }
        return recipe.contactMohm().orElse(0.0);
    }

    private void pack() {
        for (int row = 0; row < recipe.rows(); row++) {
            int hub = hub(row);
            for (int cell = first(row); cell < first(row + 1); cell++) {
                if (cell != hub) {
                    touch(upper(hub), upper(cell), jointOf(cell), new Slot(Role.CELL, "", cell));
                    contact(lower(hub), lower(cell));
                }
            }
            if (row > 0) {
                touch(lower(hub(row - 1)), upper(hub), jointOf(hub), new Slot(Role.CELL, "", hub));
            }
        }
    }

    private int first(int row) {
        return row * recipe.side();
    }

    /** The cell of a plate to which the rest of the bench is joined: the first without a joint of its own. */
    private int hub(int row) {
        for (int cell = first(row); cell < first(row + 1); cell++) {
            if (!recipe.cellJoints().containsKey(cell)) {
                return cell;
            }
        }
        return first(row);
    }

    private double jointOf(int cell) {
        return recipe.cellJoints().containsKey(cell) ? recipe.cellJoints().get(cell) : contactMohm();
    }

    private TerminalRef packPlus() {
        return upper(hub(0));
    }

    private TerminalRef packMinus() {
        return lower(hub(recipe.rows() - 1));
    }

    /** From the pack's plus through everything in line to the load, and back. */
    private void loop() {
        boolean heats = !recipe.coils().isEmpty();
        boolean regulated = recipe.single().containsKey(PartKind.BOARD);
        boolean charged = recipe.single().containsKey(PartKind.CHARGER);
        if (!heats && !regulated) {
            charged(charged);
            return;
        }
        TerminalRef from = packPlus();
        boolean first = true;
        for (PartKind kind : IN_LINE) {
            Optional<Keys> keys = inLine(kind);
            if (keys.isPresent()) {
                Part part = part(kind.word(), kind, keys.get());
                parts.add(part);
                wire(from, part.terminals().get(0), first ? WirePlace.PLUS : before(kind));
                from = part.terminals().get(1);
                first = false;
            }
        }
        TerminalRef back;
        if (regulated) {
            Part board = part(PartKind.BOARD.word(), PartKind.BOARD, board());
            parts.add(board);
            wire(from, board.terminal("in+"), first ? WirePlace.PLUS : Clause.BOARD.word());
            back = board.terminal("in-");
            if (heats) {
                coils(board.terminal("out+"), WirePlace.COIL, board.terminal("out-"), WirePlace.BACK);
            }
            wire(back, packMinus(), WirePlace.MINUS);
        } else {
            coils(from, first ? WirePlace.PLUS : WirePlace.COIL, packMinus(), WirePlace.MINUS);
        }
        if (charged) {
            bay();
        }
    }

    private static String before(PartKind kind) {
        return WirePlace.before(kind).orElseThrow();
    }

    /** What lies in line of a kind; a button where nobody says that there is none. */
    private Optional<Keys> inLine(PartKind kind) {
        Optional<Keys> said = Optional.ofNullable(recipe.single().get(kind));
        if (kind == PartKind.REVERSE_GUARD) {
            return said.isPresent() && !guardsEach() ? Optional.of(guard()) : Optional.empty();
        }
        if (kind == PartKind.SWITCH && !recipe.isButtonless()) {
            if (said.isEmpty()) {
                assumed.add(Assumed.of("button"));
            }
            return Optional.of(said.orElse(Keys.NONE));
        }
        return kind == PartKind.SWITCH ? Optional.empty() : said;
    }

    private Keys board() {
        Keys said = recipe.single().get(PartKind.BOARD);
        if (!said.has("model") && (!said.has("cutoff_V") || !said.has("max_input_A"))) {
            assumed.add(Assumed.of("board"));
        }
        return said;
    }

    private void charged(boolean charged) {
        if (!charged) {
            if (recipe.shorts().isEmpty()) {
                assumed.add(Assumed.of("no-load"));
            }
            return;
        }
        bay();
    }

    /** A charger holds the pack between its clips, behind a fuse if there is one. */
    private void bay() {
        Keys said = recipe.single().get(PartKind.CHARGER);
        if (!said.has("limit_V") && !said.has("model") && recipe.rows() > 1) {
            said = said.with("limit_V", Usual.CHARGED_V * recipe.rows());
            assumed.add(Assumed.of("charger", Assumed.Detail.of(said.number("limit_V", 0), Unit.VOLT)));
        }
        Part charger = part(PartKind.CHARGER.word(), PartKind.CHARGER, said);
        parts.add(charger);
        String place = Clause.CHARGER.word();
        touch(charger.terminal("+"), packPlus(), joint(place), new Slot(Role.CHARGER, place, -1));
        contact(charger.terminal("-"), packMinus());
    }

    private double joint(String place) {
        return recipe.joints().containsKey(place) ? recipe.joints().get(place) : contactMohm();
    }

    private void coils(TerminalRef from, String there, TerminalRef to, String back) {
        List<Part> coils = new ArrayList<>();
        for (int i = 0; i < recipe.coils().size(); i++) {
            coils.add(
                    part(coilId(i, recipe), PartKind.COIL, wound(recipe.coils().get(i))));
        }
        parts.addAll(coils);
        if (coils.size() > 1 && recipe.coilsLie().isEmpty()) {
            assumed.add(Assumed.of("coils"));
        }
        if (recipe.coilsLie().equals(Optional.of(Recipe.Coils.IN_A_ROW))) {
            wire(from, coils.get(0).terminal("1"), there);
            for (int i = 1; i < coils.size(); i++) {
                touch(coils.get(i - 1).terminal("2"), coils.get(i).terminal("1"), legOf(i), new Slot(Role.COIL, "", i));
            }
            wire(coils.get(coils.size() - 1).terminal("2"), to, back);
            return;
        }
        int hub = coilHub();
        wire(from, coils.get(hub).terminal("1"), there);
        for (int i = 0; i < coils.size(); i++) {
            if (i != hub) {
                Slot leg = new Slot(Role.COIL, "", i);
                touch(coils.get(hub).terminal("1"), coils.get(i).terminal("1"), legOf(i), leg);
                double post = Usual.postMohm(catalogue);
                touch(coils.get(hub).terminal("2"), coils.get(i).terminal("2"), post, new Slot(Role.POST, "", -1));
            }
        }
        wire(coils.get(hub).terminal("2"), to, back);
    }

    /** The coil to which the others are joined: the first without a joint of its own, in a row the first. */
    private int coilHub() {
        boolean row = recipe.coilsLie().equals(Optional.of(Recipe.Coils.IN_A_ROW));
        int hub = 0;
        while (!row && hub < recipe.coils().size() - 1 && recipe.coilJoints().containsKey(hub)) {
            hub++;
        }
        return hub;
    }

    /** An only coil is called by what it is: texts then say "the coil". */
    static String coilId(int coil, Recipe recipe) {
        String word = PartKind.COIL.word();
        return recipe.coils().size() == 1 ? word : word + "-" + (coil + 1);
    }

    private double legOf(int coil) {
        return recipe.coilJoints().containsKey(coil) ? recipe.coilJoints().get(coil) : Usual.postMohm(catalogue);
    }

    private Keys wound(Keys coil) {
        Optional<Keys> wire = coil.group("wire");
        if (wire.isEmpty() || wire.get().has("inner_mm")) {
            return coil;
        }
        assumed.add(Assumed.of("inner", Assumed.Detail.of(Usual.INNER_MM / 1000, Unit.METRE)));
        return coil.with("wire", wire.get().with("inner_mm", Usual.INNER_MM));
    }

    private void shorts() {
        recipe.shorts().forEach((place, ohm) -> {
            if (ohm.isEmpty()) {
                assumed.add(Assumed.of("short", Assumed.Detail.of(Usual.SHORT_OHM, Unit.OHM)));
            }
            boolean coil = place.equals(WirePlace.COIL);
            Part clip = Part.of("short-" + place, PartKind.RESISTOR, "ohm", ohm.orElse(Usual.SHORT_OHM))
                    .with("label", Texts.in("words", locale).say("label.short"));
            parts.add(clip);
            String id = coilId(coilHub(), recipe);
            Slot slot = new Slot(Role.CLIP, place, -1);
            add(Link.ideal(coil ? new TerminalRef(id, "1") : packPlus(), clip.terminal("1")), slot);
            add(Link.ideal(clip.terminal("2"), coil ? new TerminalRef(id, "2") : packMinus()), slot);
        });
    }

    private void contact(TerminalRef from, TerminalRef to) {
        touch(from, to, contactMohm(), new Slot(Role.CONTACT, "", -1));
    }

    private void touch(TerminalRef from, TerminalRef to, double mohm, Slot slot) {
        add(recipe.isIdeal() ? Link.ideal(from, to) : Link.touch(from, to, mohm), slot);
    }

    private void add(Link link, Slot slot) {
        links.add(link);
        slots.add(slot);
    }

    /** A wire, or the joint that somebody says is in its place. */
    private void wire(TerminalRef from, TerminalRef to, String place) {
        boolean atCell = place.equals(WirePlace.PLUS) || place.equals(WirePlace.MINUS);
        Slot slot = new Slot(Role.WIRE, place, -1);
        if (recipe.isIdeal()) {
            add(Link.ideal(from, to), slot);
            return;
        }
        Optional<Double> joint = jointInPlace(place);
        boolean said = recipe.wires().containsKey(place);
        if (joint.isPresent() && !said) {
            add(Link.touch(from, to, joint.get()), slot);
            return;
        }
        Keys own = said ? recipe.wires().get(place) : recipe.wire();
        tell(own);
        Keys jumper = Usual.wire(own);
        double contacts = joint.orElseGet(() -> atCell && !jumper.has("contacts_mohm") ? contactMohm() : 0);
        Keys whole = contacts > 0 ? jumper.with("contacts_mohm", contacts) : jumper;
        add(Link.of(Keys.of("from", from.toString(), "to", to.toString(), "jumper", whole)), slot);
    }

    /** The plus and minus joint may also be called after the cell at that end. */
    private Optional<Double> jointInPlace(String place) {
        if (recipe.joints().containsKey(place)) {
            return Optional.of(recipe.joints().get(place));
        }
        int hub = hub(0);
        return place.equals(WirePlace.PLUS)
                ? Optional.ofNullable(recipe.cellJoints().get(hub))
                : Optional.empty();
    }

    private void tell(Keys wire) {
        boolean thick = wire.has("awg") || wire.has("diameter_mm") || wire.has("area_mm2");
        Assumed.Detail awg = Assumed.Detail.of(String.valueOf(Usual.AWG));
        Assumed.Detail length = Assumed.Detail.of(Usual.LENGTH_MM / 1000, Unit.METRE);
        if (!thick && !wire.has("length_mm")) {
            assumed.add(Assumed.of("wire", awg, length));
        } else if (!thick) {
            assumed.add(Assumed.of("wire.thick", awg));
        } else if (!wire.has("length_mm")) {
            assumed.add(Assumed.of("wire.length", length));
        }
    }
}
