package org.sagwise.picture.bench;

import java.util.Map;
import org.sagwise.errand.Errand;
import org.sagwise.part.PartKind;
import org.sagwise.picture.geometry.GridBox;
import org.sagwise.picture.geometry.Round;
import org.sagwise.picture.layout.PartBox;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.Detail;
import org.sagwise.picture.scene.PotentialScale;
import org.sagwise.picture.schematic.SchematicPainter;

/** Paints everything on the bench that stands still: all but the chevrons. */
public final class StillPainter {

    private static final Map<PartKind, PartPainter> PAINTERS = Map.ofEntries(
            Map.entry(PartKind.CELL, new CellPainter()),
            Map.entry(PartKind.COIL, new CoilPainter()),
            Map.entry(PartKind.SWITCH, new SwitchPainter()),
            Map.entry(PartKind.FUSE, new FusePainter()),
            Map.entry(PartKind.PTC, new PtcPainter()),
            Map.entry(PartKind.REVERSE_GUARD, new ReverseGuardPainter()),
            Map.entry(PartKind.RESISTOR, new ResistorPainter()),
            Map.entry(PartKind.BOARD, new BoardPainter()),
            Map.entry(PartKind.SUPPLY, new BoxPainter()),
            Map.entry(PartKind.CHARGER, new BoxPainter()),
            Map.entry(PartKind.METER, new MeterPainter()));

    private StillPainter() {}

    /**
     * Paints a scene over the whole of a surface.
     *
     * @param surface any surface
     * @param scene what is painted
     * @param view the window through which it is seen
     */
    public static void paint(Pen surface, BenchScene scene, BenchView view) {
        ThemedPen pen =
                new ThemedPen(surface, scene.theme(), scene.layout().textScale(), view.scale(), scene.lineScale());
        PotentialScale scale = PotentialScale.of(scene.readings());
        Ground.felt(pen, view);
        surface.within(view.transform(), () -> {
            if (scene.shows(Detail.GRID)) {
                Ground.grid(pen, view);
            }
            bench(pen, scene, scale);
        });
        if (LegendPainter.isShown(scene)) {
            new LegendPainter(pen, scene, view).paint(scale);
        }
    }

    private static void bench(ThemedPen pen, BenchScene scene, PotentialScale scale) {
        if (scene.isSchematic()) {
            EmphasisPainter.rings(pen, scene);
            SchematicPainter.paint(pen, scene);
        } else {
            things(pen, scene, scale);
        }
        if (scene.shows(Detail.FIGURES)) {
            captions(pen, scene);
        }
        if (scene.shows(Detail.NOTES)) {
            scene.layout().notes().forEach(note -> NotePainter.paint(pen, note));
            EmphasisPainter.noteRings(pen, scene);
        }
        if (scene.shows(Detail.PROBES)) {
            scene.layout().probes().ifPresent(probes -> ProbePainter.paint(pen, scene, probes));
        }
        if (scene.shows(Detail.FLAGS)) {
            flags(pen, scene);
        }
        new LinkTags(pen, scene).paint();
    }

    private static void things(ThemedPen pen, BenchScene scene, PotentialScale scale) {
        for (PartBox box : scene.layout().parts()) {
            shadow(pen, box);
        }
        new ConductorPainter(pen, scene, scale).paint();
        EmphasisPainter.rings(pen, scene);
        for (PartBox box : scene.layout().parts()) {
            Errand.heed();
            PAINTERS.get(box.part().kind()).paint(pen, scene, box);
        }
    }

    /** What solid bodies cast; a coil and a fuse are too slight to cast any. */
    private static void shadow(ThemedPen pen, PartBox box) {
        double inset = switch (box.part().kind()) {
            case COIL, FUSE, PTC, REVERSE_GUARD, RESISTOR -> Double.NaN;
            case SWITCH, SUPPLY, CHARGER -> 13;
            case CELL, BOARD, METER -> 2;
        };
        if (!Double.isNaN(inset)) {
            GridBox body = box.body();
            pen.fill(
                    Round.between(
                            body.x() + inset + 4,
                            body.y() + inset + 5,
                            body.right() - inset + 5,
                            body.bottom() - inset + 6,
                            10),
                    Tone.SHADOW);
        }
    }

    private static void captions(ThemedPen pen, BenchScene scene) {
        Captions captions = new Captions(scene);
        CaptionPainter painter = new CaptionPainter(pen);
        for (PartBox box : scene.layout().parts()) {
            painter.paint(box, captions.of(box));
        }
    }

    private static void flags(ThemedPen pen, BenchScene scene) {
        FlagPlaces.of(scene).forEach(place -> FlagPainter.plant(pen, place));
    }
}
