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
import org.sagwise.words.JointBuilder.Role;
import org.sagwise.words.JointBuilder.Slot;

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
    private final JointBuilder joints;

    /**
     * @param locale language of labels
     */
    BenchBuilder(Recipe recipe, Catalogue catalogue, Locale locale) {
        this.locale = locale;
        this.recipe = recipe;
        this.catalogue = catalogue;
        this.cells = new CellMaker(catalogue);
        this.joints = new JointBuilder(recipe, catalogue, assumed);
    }

    /** What decides each joint, in the order of the links. */
    List<Slot> slots() {
        return joints.slots();
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
        Scenario bench = Scenario.of("", parts, joints.links());
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
            joints.contact(pole(cell, true), new TerminalRef(id, "in"));
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

    private void pack() {
        for (int row = 0; row < recipe.rows(); row++) {
            int hub = recipe.hub(row);
            for (int cell = recipe.first(row); cell < recipe.first(row + 1); cell++) {
                if (cell != hub) {
                    joints.touch(upper(hub), upper(cell), joints.jointOf(cell), new Slot(Role.CELL, "", cell));
                    joints.contact(lower(hub), lower(cell));
                }
            }
            if (row > 0) {
                joints.touch(lower(recipe.hub(row - 1)), upper(hub), joints.jointOf(hub), new Slot(Role.CELL, "", hub));
            }
        }
    }

    private TerminalRef packPlus() {
        return upper(recipe.hub(0));
    }

    private TerminalRef packMinus() {
        return lower(recipe.hub(recipe.rows() - 1));
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
                joints.wire(from, part.terminals().get(0), first ? WirePlace.PLUS : before(kind));
                from = part.terminals().get(1);
                first = false;
            }
        }
        TerminalRef back;
        if (regulated) {
            Part board = part(PartKind.BOARD.word(), PartKind.BOARD, board());
            parts.add(board);
            joints.wire(from, board.terminal("in+"), first ? WirePlace.PLUS : Clause.BOARD.word());
            back = board.terminal("in-");
            if (heats) {
                coils(board.terminal("out+"), WirePlace.COIL, board.terminal("out-"), WirePlace.BACK);
            }
            joints.wire(back, packMinus(), WirePlace.MINUS);
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
        joints.touch(charger.terminal("+"), packPlus(), joints.at(place), new Slot(Role.CHARGER, place, -1));
        joints.contact(charger.terminal("-"), packMinus());
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
            joints.wire(from, coils.get(0).terminal("1"), there);
            for (int i = 1; i < coils.size(); i++) {
                joints.touch(
                        coils.get(i - 1).terminal("2"),
                        coils.get(i).terminal("1"),
                        joints.legOf(i),
                        new Slot(Role.COIL, "", i));
            }
            joints.wire(coils.get(coils.size() - 1).terminal("2"), to, back);
            return;
        }
        int hub = coilHub();
        joints.wire(from, coils.get(hub).terminal("1"), there);
        for (int i = 0; i < coils.size(); i++) {
            if (i != hub) {
                Slot leg = new Slot(Role.COIL, "", i);
                joints.touch(coils.get(hub).terminal("1"), coils.get(i).terminal("1"), joints.legOf(i), leg);
                double post = Usual.postMohm(catalogue);
                joints.touch(
                        coils.get(hub).terminal("2"), coils.get(i).terminal("2"), post, new Slot(Role.POST, "", -1));
            }
        }
        joints.wire(coils.get(hub).terminal("2"), to, back);
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
            joints.add(Link.ideal(coil ? new TerminalRef(id, "1") : packPlus(), clip.terminal("1")), slot);
            joints.add(Link.ideal(clip.terminal("2"), coil ? new TerminalRef(id, "2") : packMinus()), slot);
        });
    }
}
