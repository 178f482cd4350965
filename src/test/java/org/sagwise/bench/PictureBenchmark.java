package org.sagwise.bench;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Locale;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;
import org.sagwise.assessment.Assessment;
import org.sagwise.fixture.Packs;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.report.pen.Java2dPen;
import org.sagwise.scenario.Scenario;

/**
 * How long it takes to lay out and to paint packs of 4, 20 and 100 parts at 1280 × 720 in software:
 * the still layer, one frame of chevrons, and the staircase.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class PictureBenchmark {

    private static final int WIDTH = 1280;
    private static final int HEIGHT = 720;
    private static final double FRAME_S = 1 / 60.0;

    /** Strings side by side and cells in each. */
    @Param({"1x2", "6x3", "14x7"})
    public String pack;

    private Scenario scenario;
    private BenchScene scene;
    private BenchView view;
    private StairScene stairs;
    private ChevronPainter chevrons;
    private Graphics2D surface;

    @Setup
    public void build() {
        String[] sizes = pack.split("x");
        scenario = Packs.of(Integer.parseInt(sizes[0]), Integer.parseInt(sizes[1]));
        Assessment assessment = Scenes.assess(scenario);
        BenchLayout layout = BenchLayout.of(scenario);
        scene = BenchScene.of(assessment, layout, Theme.LIGHT, Locale.ENGLISH);
        view = BenchView.fit(layout.bounds(), WIDTH, HEIGHT);
        stairs = StairScene.of(assessment, Theme.LIGHT, Locale.ENGLISH);
        chevrons = new ChevronPainter(scene);
        surface = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_ARGB_PRE).createGraphics();
    }

    @TearDown
    public void putAway() {
        surface.dispose();
    }

    @Benchmark
    public BenchLayout layout() {
        return BenchLayout.of(scenario);
    }

    @Benchmark
    public void still() {
        StillPainter.paint(new Java2dPen(surface), scene, view);
    }

    @Benchmark
    public void chevrons() {
        chevrons.advance(scene.readings(), FRAME_S);
        chevrons.paint(new Java2dPen(surface), scene, view);
    }

    @Benchmark
    public void staircase() {
        StaircasePainter.of(stairs, WIDTH, 230).paint(new Java2dPen(surface));
    }
}
