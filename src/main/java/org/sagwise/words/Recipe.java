package org.sagwise.words;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.sagwise.part.PartKind;
import org.sagwise.part.key.Keys;

/**
 * A bench as a line says it, before it is built. Filled while a line or a bench is read, and not changed after that.
 * Cells and coils are counted from 0.
 */
final class Recipe {

    /** Most cells: they are told apart by a letter. */
    static final int MOST_CELLS = 26;

    /** How coils lie to one another. */
    enum Coils {
        SIDE_BY_SIDE,
        IN_A_ROW
    }

    /** Where a reverse guard sits. */
    enum Guards {
        IN_LINE,
        BEHIND_EACH_CELL
    }

    /** Cells, or plates of cells, in a row; none if nothing was said. */
    private Optional<Item.Arranged> layout = Optional.empty();

    /** What all cells say. */
    private Keys cells = Keys.NONE;

    /** What single cells say besides. */
    private final Map<Integer, Keys> own = new TreeMap<>();

    private final Set<Integer> reversed = new TreeSet<>();
    private final List<Keys> coils = new ArrayList<>();
    private Optional<Coils> coilsLie = Optional.empty();

    /** One of a kind: button, fuse, board and so on. */
    private final Map<PartKind, Keys> single = new EnumMap<>(PartKind.class);

    private boolean buttonless;
    private Guards guards = Guards.IN_LINE;

    /** What all wires say. */
    private Keys wire = Keys.NONE;

    /** What single wires say besides, by their place. */
    private final Map<String, Keys> wires = new LinkedHashMap<>();

    private Optional<Double> contactMohm = Optional.empty();
    private final Map<Integer, Double> cellJoints = new TreeMap<>();
    private final Map<Integer, Double> coilJoints = new TreeMap<>();

    /** Joints in place of a wire, by their place. */
    private final Map<String, Double> joints = new LinkedHashMap<>();

    /** What lies across coil or pack, by its place: Ω, if they are known. */
    private final Map<String, Optional<Double>> shorts = new LinkedHashMap<>();

    private boolean ideal;
    private Optional<Double> ambientC = Optional.empty();
    private boolean held;

    Optional<Item.Arranged> layout() {
        return layout;
    }

    void arrange(Item.Arranged arranged) {
        layout = Optional.of(arranged);
    }

    int rows() {
        return layout.map(Item.Arranged::rows).orElse(1);
    }

    int side() {
        return layout.map(Item.Arranged::side).orElse(1);
    }

    int count() {
        return rows() * side();
    }

    Keys cells() {
        return cells;
    }

    void sayOfCells(Keys keys) {
        cells = keys;
    }

    Map<Integer, Keys> own() {
        return own;
    }

    Set<Integer> reversed() {
        return reversed;
    }

    List<Keys> coils() {
        return coils;
    }

    Optional<Coils> coilsLie() {
        return coilsLie;
    }

    void layCoils(Coils how) {
        coilsLie = Optional.of(how);
    }

    Map<PartKind, Keys> single() {
        return single;
    }

    boolean isButtonless() {
        return buttonless;
    }

    void leaveButtonOut() {
        buttonless = true;
    }

    Guards guards() {
        return guards;
    }

    void guard(Guards where) {
        guards = where;
    }

    Keys wire() {
        return wire;
    }

    void sayOfWires(Keys keys) {
        wire = keys;
    }

    Map<String, Keys> wires() {
        return wires;
    }

    Optional<Double> contactMohm() {
        return contactMohm;
    }

    void touch(double mohm) {
        contactMohm = Optional.of(mohm);
    }

    Map<Integer, Double> cellJoints() {
        return cellJoints;
    }

    /** The first cell of a plate. */
    int first(int row) {
        return row * side();
    }

    /** The cell of a plate to which the rest of the bench is joined: the first without a joint of its own. */
    int hub(int row) {
        for (int cell = first(row); cell < first(row + 1); cell++) {
            if (!cellJoints.containsKey(cell)) {
                return cell;
            }
        }
        return first(row);
    }

    Map<Integer, Double> coilJoints() {
        return coilJoints;
    }

    Map<String, Double> joints() {
        return joints;
    }

    Map<String, Optional<Double>> shorts() {
        return shorts;
    }

    boolean isIdeal() {
        return ideal;
    }

    void idealise() {
        ideal = true;
    }

    Optional<Double> ambientC() {
        return ambientC;
    }

    void surround(double celsius) {
        ambientC = Optional.of(celsius);
    }

    boolean isHeld() {
        return held;
    }

    void hold() {
        held = true;
    }
}
