package org.sagwise.picture;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.File;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import javax.imageio.ImageIO;
import org.sagwise.assessment.Assessment;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.part.Catalogue;
import org.sagwise.picture.bench.ChevronPainter;
import org.sagwise.picture.bench.StillPainter;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.layout.Benches;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.picture.stairs.StairScene;
import org.sagwise.picture.stairs.StaircasePainter;
import org.sagwise.report.pen.Java2dPen;
import org.sagwise.report.picture.BenchPicture;
import org.sagwise.report.picture.PictureFormat;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.scenario.Scenario;

/**
 * Paints every demo and every test bench, to be looked at: run it and open the pictures in the
 * folder given as first argument.
 */
public final class Gallery {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();

    private Gallery() {}

    public static void main(String[] arguments) throws IOException {
        File folder = new File(arguments[0]);
        folder.mkdirs();
        for (Map.Entry<String, Scenario> bench : benches().entrySet()) {
            if (arguments.length > 1 && !bench.getKey().matches(arguments[1])) {
                continue;
            }
            page(bench.getValue(), new File(folder, bench.getKey()));
            write(schematic(bench.getValue(), Theme.LIGHT), new File(folder, bench.getKey() + "-schematic.png"));
            for (Theme theme : Theme.values()) {
                Scenario scenario = theme == Theme.LIGHT ? bench.getValue().pressed() : bench.getValue();
                String name = bench.getKey() + "-" + theme.name().toLowerCase(Locale.ROOT);
                write(bench(scenario, theme, 790, 400), new File(folder, name + ".png"));
                write(stairs(scenario, theme, 790, 230), new File(folder, name + "-stairs.png"));
            }
        }
    }

    private static Map<String, Scenario> benches() {
        Map<String, Scenario> benches = new LinkedHashMap<>();
        DemoScenarios.names()
                .forEach(name -> benches.put(
                        name,
                        new ScenarioReader(CATALOGUE)
                                .read(DemoScenarios.bytes(name))
                                .scenario()
                                .orElseThrow()));
        benches.putAll(Benches.all());
        return benches;
    }

    private static BufferedImage schematic(Scenario scenario, Theme theme) {
        BenchScene scene = BenchScene.of(
                Assessment.of(scenario.pressed(), CATALOGUE),
                BenchLayout.of(scenario, 1, Drawing.SCHEMATIC),
                theme,
                Locale.ENGLISH);
        BufferedImage image = new BufferedImage(790, 400, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        BenchView view = BenchView.fit(scene.layout().bounds(), 790, 400);
        StillPainter.paint(new Java2dPen(surface), scene, view);
        ChevronPainter.paintStill(new Java2dPen(surface), scene, view);
        surface.dispose();
        return image;
    }

    private static BufferedImage bench(Scenario scenario, Theme theme, int width, int height) {
        Assessment assessment = Assessment.of(scenario, CATALOGUE);
        BenchLayout layout = BenchLayout.of(scenario);
        BenchScene scene = BenchScene.of(assessment, layout, theme, Locale.ENGLISH);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        StillPainter.paint(new Java2dPen(surface), scene, BenchView.fit(layout.bounds(), width, height));
        ChevronPainter.paintStill(new Java2dPen(surface), scene, BenchView.fit(layout.bounds(), width, height));
        surface.dispose();
        return image;
    }

    private static void page(Scenario scenario, File base) throws IOException {
        for (PictureFormat format : PictureFormat.values()) {
            try (OutputStream out = new FileOutputStream(base + "-page." + format.ending())) {
                BenchPicture.write(
                        Scenes.assess(scenario.pressed()), format, Locale.ENGLISH, Theme.LIGHT, PictureSize.FORUM, out);
            }
        }
    }

    private static BufferedImage stairs(Scenario scenario, Theme theme, int width, int height) {
        StairScene scene = StairScene.of(Scenes.assess(scenario), theme, Locale.ENGLISH);
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        StaircasePainter.of(scene, width, height).paint(new Java2dPen(surface));
        surface.dispose();
        return image;
    }

    private static void write(BufferedImage image, File file) throws IOException {
        ImageIO.write(image, "png", file);
    }
}
