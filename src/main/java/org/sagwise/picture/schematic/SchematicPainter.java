package org.sagwise.picture.schematic;

import java.util.Map;
import java.util.Set;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.GridPoint;
import org.sagwise.picture.geometry.Oval;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.BenchScene;

/**
 * Paints lines, junctions and symbols. Lines that cross without a dot are not joined (from memory,
 * no source at hand: the junction dot of IEC 60617).
 */
public final class SchematicPainter {

    /** Width of every thin line. */
    public static final double LINE = 2.4;

    /** Width of what stands out behind a line. */
    public static final double HALO = 12;

    private static final double DOT = 4.6;

    private static final Map<PartKind, Symbol> SYMBOLS = Map.ofEntries(
            Map.entry(PartKind.CELL, new CellSymbol()),
            Map.entry(PartKind.COIL, new ElementSymbol()),
            Map.entry(PartKind.SWITCH, new SwitchSymbol()),
            Map.entry(PartKind.FUSE, new FuseSymbol()),
            Map.entry(PartKind.PTC, new PtcSymbol()),
            Map.entry(PartKind.REVERSE_GUARD, new ReverseGuardSymbol()),
            Map.entry(PartKind.RESISTOR, new ResistorSymbol()),
            Map.entry(PartKind.SUPPLY, new SupplySymbol()),
            Map.entry(PartKind.METER, new MeterSymbol()),
            Map.entry(PartKind.CHARGER, new BlockSymbol()),
            Map.entry(PartKind.BOARD, new BlockSymbol()));

    private final ThemedPen pen;
    private final BenchScene scene;

    private SchematicPainter(ThemedPen pen, BenchScene scene) {
        this.pen = pen;
        this.scene = scene;
    }

    /** Paints a scene whose layout is a schematic, but for its figures, notes and flags. */
    public static void paint(ThemedPen pen, BenchScene scene) {
        SchematicPainter painter = new SchematicPainter(pen, scene);
        painter.lines();
        painter.symbols();
    }

    private void lines() {
        Set<Integer> lit = scene.emphasis().links();
        for (Conductor conductor : scene.layout().conductors()) {
            if (lit.stream().anyMatch(conductor::carries)) {
                pen.draw(shape(conductor), Tone.CHOSEN, HALO);
            }
        }
        for (Conductor conductor : scene.layout().conductors()) {
            pen.draw(shape(conductor), Tone.CONDUCTOR_EDGE, LINE);
        }
        for (GridPoint at : Junctions.of(scene.layout())) {
            pen.fill(Oval.circle(at.x(), at.y(), DOT), Tone.CONDUCTOR_EDGE);
        }
    }

    /** The line that is drawn for a conductor. */
    public static Path shape(Conductor conductor) {
        Path.Builder path = new Path.Builder();
        GridPoint first = conductor.points().get(0);
        path.moveTo(first.x(), first.y());
        conductor.points().stream().skip(1).forEach(point -> path.lineTo(point.x(), point.y()));
        return path.build();
    }

    private void symbols() {
        for (PartBox box : scene.layout().parts()) {
            SYMBOLS.get(box.part().kind()).paint(new SymbolPen(pen, box), scene, box);
        }
    }
}
