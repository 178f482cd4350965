package org.sagwise.reading;

import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.sagwise.part.Catalogue;
import org.sagwise.part.CellSpec;
import org.sagwise.part.CoilSpec;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Joint;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.TerminalRef;

/**
 * A scenario with its catalogue values looked up: what can be asked for readings. Immutable to the
 * eye; readings are computed once, when first asked for.
 */
public final class Bench {

    private final Scenario scenario;
    private final Catalogue catalogue;
    private final Map<String, ResolvedCell> cells = new LinkedHashMap<>();
    private final Map<String, ResolvedCoil> coils = new LinkedHashMap<>();
    private final Map<String, Part> parts = new HashMap<>();
    private final Map<String, EffectiveKeys> values = new HashMap<>();
    private final Map<String, Object> specs = new HashMap<>();
    private final States start;
    private Moment rest;
    private Moment fired;

    private Bench(Scenario scenario, Catalogue catalogue) {
        this.scenario = scenario;
        this.catalogue = catalogue;
        scenario.parts().forEach(this::lookUp);
        start = begin();
    }

    private Bench(Bench old, Scenario scenario, Optional<String> changed) {
        this.scenario = scenario;
        this.catalogue = old.catalogue;
        parts.putAll(old.parts);
        values.putAll(old.values);
        specs.putAll(old.specs);
        cells.putAll(old.cells);
        coils.putAll(old.coils);
        changed.flatMap(scenario::part).ifPresent(this::lookUp);
        start = begin();
    }

    private void lookUp(Part part) {
        Keys around = Keys.of("temperature_C", scenario.ambientC());
        parts.put(part.id(), part);
        EffectiveKeys its = part.kind().effective(part.keys(), modelOf(part), around);
        values.put(part.id(), its);
        part.kind().descriptor().spec().ifPresent(maker -> specs.put(part.id(), maker.make(its, catalogue)));
        if (part.kind() == PartKind.CELL) {
            cells.put(part.id(), ResolvedCell.of(part, its, spec(part.id(), CellSpec.class)));
        } else if (part.kind() == PartKind.COIL) {
            coils.put(part.id(), new ResolvedCoil(part, spec(part.id(), CoilSpec.class)));
        }
    }

    private States begin() {
        Map<String, CellState> states = new HashMap<>();
        cells.forEach((id, cell) -> states.put(id, cell.start()));
        Set<String> blown = new HashSet<>();
        scenario.parts().stream()
                .map(Part::id)
                .filter(id -> !cells.containsKey(id)
                        && !coils.containsKey(id)
                        && values.get(id).flag("blown"))
                .forEach(blown::add);
        return new States(states, Map.of(), Map.of(), blown);
    }

    /**
     * Looks a scenario up in a catalogue.
     *
     * @throws IllegalArgumentException if the scenario names what is not in the catalogue; the
     *     rules of the scenario find that first
     */
    public static Bench of(Scenario scenario, Catalogue catalogue) {
        return new Bench(scenario, catalogue);
    }

    /**
     * The same bench with other numbers in one part, or in links alone: nothing else is looked up
     * again. For asking the same question thousands of times.
     *
     * @param other the scenario with that change and no other
     * @param changed the part; empty where only links differ
     */
    public Bench with(Scenario other, Optional<String> changed) {
        return new Bench(this, other, changed);
    }

    private Keys modelOf(Part part) {
        return part.model()
                .map(id -> catalogue
                        .models(part.kind())
                        .find(id)
                        .orElseThrow(() ->
                                new IllegalArgumentException("no " + part.kind().word() + " " + id)))
                .map(PartModel::keys)
                .orElse(Keys.NONE);
    }

    public Scenario scenario() {
        return scenario;
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** The part with this id, found at once however many there are. */
    public Part part(String id) {
        return parts.get(id);
    }

    /** What holds for a part: what it says itself, what its model says, what is usual. */
    public EffectiveKeys values(String id) {
        return values.get(id);
    }

    /**
     * What the values of a part mean in SI units, worked out once.
     *
     * @param type what its kind computes with, such as {@link org.sagwise.part.FuseSpec}
     * @throws IllegalArgumentException if the part's kind computes with something else
     */
    public <T> T spec(String id, Class<T> type) {
        Object spec = specs.get(id);
        if (!type.isInstance(spec)) {
            throw new IllegalArgumentException(id + " has no " + type.getSimpleName());
        }
        return type.cast(spec);
    }

    /** Cells by id, in file order. */
    public Map<String, ResolvedCell> cells() {
        return Collections.unmodifiableMap(cells);
    }

    /** Coils by id, in file order. */
    public Map<String, ResolvedCoil> coils() {
        return Collections.unmodifiableMap(coils);
    }

    /** State of everything when the scenario begins: relaxed cells, cold coils. */
    public States start() {
        return start;
    }

    /** Readings at the start with the button as the scenario has it. */
    public Readings now() {
        return moment(scenario.press()).readings();
    }

    /** Readings at the start with the button let go. */
    public Readings rest() {
        return moment(Press.RELEASED).readings();
    }

    /** Readings at the start, at the instant at which the button is pressed. */
    public Readings fired() {
        return moment(Press.HELD).readings();
    }

    /** Readings in any state. */
    public Readings at(States states, Press press) {
        return Moment.of(this, states, press).readings();
    }

    Moment moment(Press press) {
        if (press.isHeld()) {
            if (fired == null) {
                fired = Moment.of(this, start, Press.HELD);
            }
            return fired;
        }
        if (rest == null) {
            rest = Moment.of(this, start, Press.RELEASED);
        }
        return rest;
    }

    /** Whether a switch lets current through. */
    public boolean isClosed(Part part, Press press) {
        String stuck = values.get(part.id()).word("stuck").orElse("");
        return stuck.equals("closed") || (press.isHeld() && !stuck.equals("open"));
    }

    /** Whether a link joins its ends: the can of a cell whose wrap is sound touches nothing. */
    public boolean joins(Link link) {
        return isBare(link.from()) && isBare(link.to());
    }

    private boolean isBare(TerminalRef terminal) {
        return !terminal.isCan()
                || parts.get(terminal.part()).kind() != PartKind.CELL
                || cells.get(terminal.part()).isTorn();
    }

    /** Resistance of a link in a state, Ω. */
    public double ohmOf(Link link, int index, States states) {
        Joint joint = link.joint();
        if (joint instanceof Joint.Touch touch) {
            return touch.mohm() / 1000;
        }
        return joint instanceof Joint.Jumper jumper
                ? jumper.ohmAt(states.linkC().getOrDefault(index, scenario.ambientC()))
                : 0;
    }
}
