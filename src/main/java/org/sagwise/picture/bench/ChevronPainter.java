package org.sagwise.picture.bench;

import java.util.ArrayList;
import java.util.List;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.geometry.Path;
import org.sagwise.picture.layout.Conductor;
import org.sagwise.picture.look.Contrast;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.pen.Colour;
import org.sagwise.picture.pen.Pen;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.scene.PotentialScale;
import org.sagwise.reading.LinkReading;
import org.sagwise.reading.Readings;

/**
 * Paints chevrons that drift along conductors the way the current goes (plus to minus, by
 * convention): at a constant distance from each other, the faster the more current flows.
 *
 * <p>Belongs to one layout. Where the chevrons have got to is remembered, so that they go on
 * smoothly when the current changes.
 */
public final class ChevronPainter {

    /** Below this nothing is drawn, A. */
    public static final double LEAST_A = 1e-3;

    private static final double UNITS_PER_DECADE = 16;

    /** On a schematic's thin lines marks are small and far apart. */
    private static final double THIN = 8;

    private static final double SPARSE = 68;

    /** More than anybody tells apart, and as many as a browser paints within a frame. */
    private static final double MOST = 2500;

    private static final double BRIGHT = 0.28;
    private static final Colour DARK_MARK = Colour.of(0x10181E);
    private static final Colour BRIGHT_MARK = Colour.WHITE;

    private final List<ChevronTrack> tracks = new ArrayList<>();

    /** Chevrons for the conductors of a scene's layout. */
    public ChevronPainter(BenchScene scene) {
        List<Conductor> conductors = scene.layout().conductors();
        double least = conductors.stream().mapToDouble(Conductor::length).sum() / MOST;
        double spacing = Math.max(least, scene.isSchematic() ? SPARSE : ChevronTrack.SPACING);
        for (Conductor conductor : conductors) {
            tracks.add(
                    scene.isSchematic()
                            ? new ChevronTrack(conductor, THIN, 0, spacing)
                            : new ChevronTrack(
                                    conductor,
                                    ConductorLook.width(conductor, scene.scenario()),
                                    ConductorLook.radius(conductor),
                                    spacing));
        }
    }

    /**
     * Speed of chevrons: {@value #UNITS_PER_DECADE} bench units a second for every tenfold of
     * current above {@value #LEAST_A} A.
     *
     * @param currentA current, A; its sign does not matter
     */
    public static double speed(double currentA) {
        double times = Math.abs(currentA) / LEAST_A;
        return times > 1 ? UNITS_PER_DECADE * Math.log10(times) : 0;
    }

    /** Lets the chevrons drift on for a while, s, with the currents of some readings. */
    public void advance(Readings readings, double seconds) {
        for (ChevronTrack track : tracks) {
            double current = current(track.conductor(), readings);
            track.drift(Math.signum(current) * speed(current) * seconds);
        }
    }

    /** Whether any chevron is to be seen, so that the clock may rest while there is none. */
    public boolean isMoving(Readings readings) {
        return tracks.stream().anyMatch(track -> Math.abs(current(track.conductor(), readings)) >= LEAST_A);
    }

    /**
     * Paints the chevrons where they have got to, over nothing: the surface is not cleared.
     *
     * @param surface any surface; its transform is put back afterward
     */
    public void paint(Pen surface, BenchScene scene, BenchView view) {
        PotentialScale scale = PotentialScale.of(scene.readings());
        ThemedPen pen = new ThemedPen(surface, scene.theme(), scene.layout().textScale(), 1, scene.lineScale());
        List<Box> tags = new LinkTags(pen, scene).places();
        Path.Builder onDark = new Path.Builder();
        Path.Builder onBright = new Path.Builder();
        for (ChevronTrack track : tracks) {
            double current = current(track.conductor(), scene.readings());
            if (Math.abs(current) >= LEAST_A) {
                track.addTo(isBright(track, scene, scale) ? onBright : onDark, current > 0, tags);
            }
        }
        Path bright = onBright.build();
        Path dark = onDark.build();
        surface.within(view.transform(), () -> {
            if (scene.isSchematic()) {
                pen.draw(onBright.append(dark).build(), pen.colour(Tone.CONDUCTOR_EDGE), 2.6);
            } else {
                pen.draw(bright, BRIGHT_MARK, 4.6);
                pen.draw(bright, DARK_MARK, 2.4);
                pen.draw(dark, DARK_MARK, 4.6);
                pen.draw(dark, BRIGHT_MARK, 2.4);
            }
        });
    }

    /** Paints the chevrons of a scene once, standing still. */
    public static void paintStill(Pen surface, BenchScene scene, BenchView view) {
        new ChevronPainter(scene).paint(surface, scene, view);
    }

    private static boolean isBright(ChevronTrack track, BenchScene scene, PotentialScale scale) {
        int link = track.conductor().shares().get(0).link();
        double potential =
                scene.readings().potentialV(scene.readings().links().get(link).from());
        return scale.colour(potential).map(c -> Contrast.luminance(c) > BRIGHT).orElse(true);
    }

    /** Current along a conductor's points, A; 0 where it cannot be told. */
    static double current(Conductor conductor, Readings readings) {
        double sum = 0;
        for (Conductor.Share share : conductor.shares()) {
            LinkReading link = readings.links().get(share.link());
            sum += share.sign() * link.currentA();
        }
        return Double.isNaN(sum) ? 0 : sum;
    }
}
