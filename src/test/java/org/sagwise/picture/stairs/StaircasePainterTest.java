package org.sagwise.picture.stairs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.Awt;
import org.sagwise.picture.Scenes;
import org.sagwise.picture.geometry.Box;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.look.ThemedPen;
import org.sagwise.picture.look.Tone;
import org.sagwise.picture.scene.Emphasis;
import org.sagwise.reading.Staircase;
import org.sagwise.reading.Staircase.Kind;
import org.sagwise.reading.Staircase.Lane;
import org.sagwise.reading.Staircase.Step;
import org.sagwise.report.pen.Java2dPen;
import org.sagwise.scenario.Scenario;

class StaircasePainterTest {

    static Stream<Scenario> scenarios() {
        return Scenes.scenarios().values().stream()
                .flatMap(scenario -> Stream.of(scenario.pressed(), scenario.released()));
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void order_ofAnyStairs_goesOnFromStepToStepAndClosesTheLoop(Scenario scenario) {
        StairOrder order = StairOrder.of(Scenes.assess(scenario).staircase());
        List<Step> steps = order.steps();
        for (int i = 0; i < steps.size(); i++) {
            Step next = steps.get((i + 1) % steps.size());
            assertEquals(steps.get(i).toV(), next.fromV(), 1e-9);
        }
        for (Lane lane : order.lanes()) {
            List<Step> beside = lane.steps();
            assertEquals(levelBefore(steps, lane.afterStep()), beside.get(0).fromV(), 1e-9, "begin");
            assertEquals(
                    levelBefore(steps, lane.untilStep()),
                    beside.get(beside.size() - 1).toV(),
                    1e-9,
                    "end");
            assertTrue(lane.afterStep() < lane.untilStep());
        }
    }

    private static double levelBefore(List<Step> steps, int place) {
        return steps.get(place % steps.size()).fromV();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void plan_ofAnyStairs_drawsEveryStepOnce(Scenario scenario) {
        Staircase staircase = Scenes.assess(scenario).staircase();
        StairOrder order = StairOrder.of(staircase);
        StairAxis axis = new StairAxis(0, order.lowestV(), order.highestV() + 0.1, 0, 200);
        StairPlan plan = StairPlan.of(Course.of(order), 0, 800, axis);
        List<String> drawn = new ArrayList<>();
        plan.columns().forEach(column -> drawn.add(name(column.step())));
        List<String> given = new ArrayList<>();
        staircase.steps().forEach(step -> given.add(name(step)));
        staircase.lanes().forEach(lane -> lane.steps().forEach(step -> given.add(name(step))));
        assertEquals(given.stream().sorted().toList(), drawn.stream().sorted().toList());
        double right = 0;
        for (Column column : plan.columns()) {
            assertTrue(column.left() >= right - 1e-6, "columns overlap");
            right = column.right();
        }
        assertTrue(right <= 800 + 1e-6);
    }

    private static String name(Step step) {
        return step.kind() + " " + step.part() + step.link();
    }

    @ParameterizedTest
    @MethodSource("scenarios")
    void paint_inAnySizeThemeAndLanguage_neverLetsWordsOverlap(Scenario scenario) {
        Assessment assessment = Scenes.assess(scenario);
        for (double[] size : new double[][] {{400, 140}, {790, 230}, {1600, 400}}) {
            for (double textScale : new double[] {1, 2}) {
                StairScene scene = new StairScene(
                        assessment.staircase(), scenario, Theme.DARK, Locale.GERMAN, textScale, Emphasis.NONE);
                paint(scene, size[0], size[1]);
                checkWords(scene, size[0], size[1]);
            }
        }
    }

    private static void checkWords(StairScene scene, double width, double height) {
        StairOrder order = StairOrder.of(scene.staircase());
        StairAxis axis = new StairAxis(0, order.lowestV(), order.highestV() + 0.1, 40, height - 20);
        StairPlan plan = StairPlan.of(Course.of(order), 60, width, axis);
        Graphics2D surface = new BufferedImage(8, 8, BufferedImage.TYPE_INT_RGB).createGraphics();
        Box room = new Box(60, 0, width - 60, height);
        StairLabels labels = new StairLabels(
                new ThemedPen(new Java2dPen(surface), scene.theme(), scene.textScale()),
                axis,
                new StairWords(scene),
                room,
                List.of(),
                0);
        labels.write(plan.columns());
        List<Box> places = labels.places();
        for (int i = 0; i < places.size(); i++) {
            for (int j = 0; j < i; j++) {
                assertFalse(
                        places.get(i).intersects(places.get(j)),
                        scene.scenario().title());
            }
        }
        surface.dispose();
    }

    @Test
    void losses_ofTheBenchCheck_leadFromRestDownToTheCoil() {
        Assessment assessment = Scenes.assess(Scenes.demo("bench-check").pressed());
        Losses losses =
                Losses.of(StairOrder.of(assessment.staircase()).steps(), 9).orElseThrow();
        double coilV = assessment.readings().coils().get(0).voltsV();
        assertEquals(4.14, losses.restV(), 1e-9);
        assertEquals(coilV, losses.leftV(), 1e-9);
        assertEquals(
                losses.restV() - losses.leftV(),
                losses.entries().stream().mapToDouble(Losses.Entry::lossV).sum(),
                1e-9);
    }

    @Test
    void losses_withLittleRoom_arePutTogetherWithoutLosingAny() {
        List<Step> steps = StairOrder.of(
                        Scenes.assess(Scenes.demo("two-in-a-row").pressed()).staircase())
                .steps();
        double all = Losses.of(steps, 20).orElseThrow().restV();
        for (int most = 2; most < 9; most++) {
            Losses losses = Losses.of(steps, most).orElseThrow();
            assertTrue(losses.entries().size() <= most);
            assertEquals(all, losses.restV(), 1e-12);
            assertEquals(
                    losses.restV() - losses.leftV(),
                    losses.entries().stream().mapToDouble(Losses.Entry::lossV).sum(),
                    1e-9);
        }
    }

    @Test
    void name_ofTheStepInsideACell_saysRaisedWhereTheCellIsCharged() {
        Set<String> seen = new HashSet<>();
        for (Scenario scenario : Scenes.scenarios().values()) {
            Assessment assessment = Scenes.assess(scenario);
            StairWords words = new StairWords(StairScene.of(assessment, Theme.LIGHT, Locale.ENGLISH));
            Stream.concat(
                            assessment.staircase().steps().stream(),
                            assessment.staircase().lanes().stream().flatMap(lane -> lane.steps().stream()))
                    .filter(step -> step.kind() == Kind.SAG && Math.abs(step.riseV()) > 1e-3)
                    .filter(step -> assessment.readings().cell(step.part()).isPresent())
                    .forEach(step -> {
                        double givesA = assessment
                                .readings()
                                .cell(step.part())
                                .orElseThrow()
                                .currentA();
                        assertEquals(givesA < 0 ? "raised" : "sag", words.name(step), scenario.title() + step);
                        seen.add(words.name(step));
                    });
        }
        assertEquals(Set.of("raised", "sag"), seen);
    }

    @Test
    void losses_withTheButtonLetGo_areNone() {
        List<Step> steps = StairOrder.of(
                        Scenes.assess(Scenes.demo("bench-check").released()).staircase())
                .steps();
        assertEquals(List.of(), Losses.of(steps, 9).orElseThrow().entries());
    }

    @Test
    void stepAt_acrossTheStairs_findsEveryStepOfTheWay() {
        Assessment assessment = Scenes.assess(Scenes.demo("bench-check").pressed());
        StaircasePainter painter =
                StaircasePainter.of(StairScene.of(assessment, Theme.LIGHT, Locale.ENGLISH), 1000, 240);
        Set<Step> found = new HashSet<>();
        for (int x = 0; x < 1000; x++) {
            painter.stepAt(x, 120).ifPresent(found::add);
        }
        assertEquals(new HashSet<>(assessment.staircase().steps()), found);
        assertTrue(painter.stepAt(2, 120).isEmpty());
        assertTrue(painter.stepAt(500, 900).isEmpty());
    }

    @Test
    void stepAt_inTheLens_findsTheSag() {
        StairScene scene =
                StairScene.of(Scenes.assess(Scenes.demo("bench-check").pressed()), Theme.LIGHT, Locale.ENGLISH);
        StaircasePainter painter = StaircasePainter.of(scene, 1000, 240);
        Set<Kind> inLens = new HashSet<>();
        for (int x = 600; x < 1000; x++) {
            painter.stepAt(x, 100).map(Step::kind).ifPresent(inLens::add);
        }
        assertTrue(inLens.containsAll(Set.of(Kind.SAG, Kind.WIRE, Kind.SWITCH)), inLens + "");
    }

    @Test
    void paint_emphasisedPart_ringsItsSteps() {
        StairScene scene =
                StairScene.of(Scenes.assess(Scenes.demo("bench-check").pressed()), Theme.LIGHT, Locale.ENGLISH);
        int chosen = Awt.colour(Theme.LIGHT.colour(Tone.CHOSEN)).getRGB();
        assertEquals(0, count(paint(scene, 800, 220), chosen));
        StairScene ringed = scene.with(Emphasis.pointingAt(Set.of("coil"), Set.of()));
        assertTrue(count(paint(ringed, 800, 220), chosen) > 100);
    }

    @Test
    void ticks_ofAnyScale_areOnesTwosOrFives() {
        for (double high : new double[] {0.03, 0.4, 4.2, 8.4, 130}) {
            StairAxis axis = new StairAxis(0, 0, high, 0, 200);
            double step = axis.tickV(20);
            double leading = step / Math.pow(10, Math.floor(Math.log10(step) + 1e-9));
            assertTrue(Stream.of(1.0, 2.0, 5.0).anyMatch(good -> Math.abs(leading - good) < 1e-9), step + "");
            assertTrue(step * axis.perVolt() >= 20 - 1e-9);
        }
    }

    private static boolean looksAlike(StairScene one, StairScene other) {
        BufferedImage first = paint(one, 800, 220);
        BufferedImage second = paint(other, 800, 220);
        return Arrays.equals(first.getRGB(0, 0, 800, 220, null, 0, 800), second.getRGB(0, 0, 800, 220, null, 0, 800));
    }

    /** Behind the veil of a question a staircase tells neither how high it is nor that its circuit is wrong. */
    @Test
    void paint_whileSomethingIsAsked_saysOnlyThatItComesLater() {
        Assessment closed = Scenes.assess(Scenes.demo("one-cell-on-half-an-ohm"));
        Assessment open = Scenes.assess(
                closed.scenario().withLinks(closed.scenario().links().subList(0, 2)));
        StairScene asked =
                StairScene.of(closed.veiled(), Theme.LIGHT, Locale.ENGLISH).withHush(StairScene.Hush.ASKED);

        assertTrue(looksAlike(
                asked, StairScene.of(open.veiled(), Theme.LIGHT, Locale.ENGLISH).withHush(StairScene.Hush.ASKED)));
        assertFalse(looksAlike(asked, asked.withHush(StairScene.Hush.NONE)));
    }

    private static BufferedImage paint(StairScene scene, double width, double height) {
        BufferedImage image = new BufferedImage((int) width, (int) height, BufferedImage.TYPE_INT_RGB);
        Graphics2D surface = image.createGraphics();
        StaircasePainter.of(scene, width, height).paint(new Java2dPen(surface));
        surface.dispose();
        return image;
    }

    private static int count(BufferedImage image, int colour) {
        int count = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                count += (image.getRGB(x, y) & 0xFFFFFF) == (colour & 0xFFFFFF) ? 1 : 0;
            }
        }
        return count;
    }
}
