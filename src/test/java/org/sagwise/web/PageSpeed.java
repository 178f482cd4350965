package org.sagwise.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.locks.LockSupport;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoScenarios;
import org.sagwise.file.ScenarioReader;
import org.sagwise.scenario.Scenario;

/**
 * Measures how quick a live page is on a phone: Chromium at 390×844 with its processor slowed down. No test, since a
 * clock on a shared machine fails nobody fairly; {@code scripts/page-speed} runs it, docs/performance.md has its figures.
 *
 * <p>Arguments: the engine's script, how often, how much slower, and optionally a file for a profile of one start.
 */
final class PageSpeed {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String ALIVE = "document.documentElement.className === 'live alive'";

    /** Notes when the button is alive, before any script of the page. */
    private static final String WATCH = "new MutationObserver(function () { if (!window.alive && " + ALIVE
            + ") { window.alive = performance.now(); } }).observe(document, {subtree: true, attributes: true});";

    /** Turns the cell B, by its button on the card; how long until the bench is laid out, and until all else is said. */
    private static final String TURN = "var from = performance.now(); document.getElementById('flip').click();"
            + " document.body.offsetHeight; var bench = performance.now() - from; window.turned = null;"
            + " (function wait() { if (document.querySelector('[aria-busy=true]')) { setTimeout(wait, 0); }"
            + " else { window.turned = [bench, performance.now() - from]; } })();";

    /** Holds back what the page does once the bench has been drawn, and lets it go on. */
    private static final String HOLD = "window.later = window.later || window.requestAnimationFrame; window.held = [];"
            + " window.requestAnimationFrame = function (deed) { window.held.push(deed); return 0; };";

    private static final String LET_GO = "window.requestAnimationFrame = window.later;"
            + " window.held.forEach(function (deed) { window.later(deed); });";

    private static final String TURN_ALONE = "document.getElementById('flip').click(); document.body.offsetHeight;";

    /** Cells in the order in which turning them brings up all sixteen benches of four, none of them twice (Gray's code). */
    private static final String ALL_SIXTEEN = "ABACABADABACABA";

    /** Runs the bench down from its start. */
    private static final String RUN_DOWN = "window.ran = 0; document.getElementById('start-over').click();"
            + " var from = performance.now(); document.getElementById('run-down').click();"
            + " (function wait() { if (document.getElementById('halt').textContent) {"
            + " window.ran = performance.now() - from; } else { setTimeout(wait, 1); } })();";

    private PageSpeed() {}

    public static void main(String[] args) throws IOException {
        byte[] engine = Files.readAllBytes(Path.of(args[0]));
        int times = Integer.parseInt(args[1]);
        String slower = args[2];
        Path folder = Files.createTempDirectory("page-speed");
        Path two = page(engine, "two-cells-side-by-side", folder);
        Path four = page(engine, "two-by-two", folder);
        System.out.printf(Locale.ROOT, "slowed down %s times, load %s%n", slower, load());
        System.out.printf(Locale.ROOT, "page: %d bytes%n", Files.size(two));
        try (Browser browser = Browser.open(Browser.Kind.CHROMIUM, folder.resolve("browser"), 390, 844, true)) {
            command(browser, "Emulation.setCPUThrottlingRate", "{\"rate\":" + slower + "}");
            command(browser, "Page.addScriptToEvaluateOnNewDocument", JSON.writeValueAsString(Map.of("source", WATCH)));
            command(browser, "Performance.enable", "{\"timeDomain\":\"threadTicks\"}");
            List<Double> clock = new ArrayList<>();
            List<Double> thread = new ArrayList<>();
            for (int i = 0; i < times; i++) {
                browser.go("about:blank");
                double before = taskS(browser);
                browser.go(two.toUri().toString());
                awaitAlive(browser);
                double after = taskS(browser);
                thread.add(1000 * (after < before ? after : after - before));
                clock.add(browser.run("return window.alive;").asDouble());
            }
            say("button alive, by the clock", clock);
            say("button alive, thread of the page", thread);
            browser.go(four.toUri().toString());
            awaitAlive(browser);
            LockSupport.parkNanos(2_000_000_000L);
            browser.tap("touch", "part-B");
            List<Double> turns = new ArrayList<>();
            List<Double> wholes = new ArrayList<>();
            for (int i = 0; i < 4 * times; i++) {
                browser.run(TURN);
                browser.await("window.turned");
                JsonNode turned = browser.run("return window.turned;");
                turns.add(turned.get(0).asDouble());
                wholes.add(turned.get(1).asDouble());
                LockSupport.parkNanos(300_000_000L);
            }
            say("a cell of four turned, the bench", turns);
            say("a cell of four turned, all of the page", wholes);
            browser.go(four.toUri().toString());
            awaitAlive(browser);
            LockSupport.parkNanos(5_000_000_000L);
            List<Double> firsts = new ArrayList<>();
            // What slows the processor down spins by the clock, which a busy machine makes longer.
            command(browser, "Emulation.setCPUThrottlingRate", "{\"rate\":1}");
            for (char cell : ALL_SIXTEEN.toCharArray()) {
                firsts.add(turnedMs(browser, "part-" + cell));
            }
            command(browser, "Emulation.setCPUThrottlingRate", "{\"rate\":" + slower + "}");
            say("a cell of four turned for the first time, the bench, thread of the page, not slowed down", firsts);
            browser.go(two.toUri().toString());
            awaitAlive(browser);
            LockSupport.parkNanos(2_000_000_000L);
            List<Double> runs = new ArrayList<>();
            for (int i = 0; i < times; i++) {
                browser.run(RUN_DOWN);
                browser.await("window.ran");
                runs.add(browser.run("return window.ran;").asDouble());
            }
            say("run-down of two cells", runs);
            if (args.length > 3) {
                profile(browser, two, Path.of(args[3]));
            }
        }
    }

    /** Processor time until the bench is laid out, so that what else the machine does matters less. */
    private static double turnedMs(Browser browser, String part) throws IOException {
        if (!browser.run("return document.getElementById('" + part + "').getAttribute('aria-pressed') === 'true';")
                .asBoolean()) {
            browser.tap("touch", part);
        }
        LockSupport.parkNanos(3_000_000_000L);
        browser.run(HOLD);
        double idle = taskS(browser);
        browser.run("return 1;");
        double before = taskS(browser);
        browser.run(TURN_ALONE);
        double after = taskS(browser);
        browser.run(LET_GO);
        return 1000 * (after - before - (before - idle));
    }

    /** Not until all else is said, too, as others wait. */
    private static void awaitAlive(Browser browser) throws IOException {
        while (!browser.run("return Boolean(window.alive);").asBoolean()) {
            LockSupport.parkNanos(20_000_000L);
        }
    }

    private static Path page(byte[] engine, String demo, Path folder) throws IOException {
        Scenario scenario = new ScenarioReader(CatalogueLoader.builtIn())
                .read(DemoScenarios.bytes(demo, Locale.ENGLISH))
                .scenario()
                .orElseThrow();
        return Files.writeString(
                folder.resolve(demo + ".html"), new PageWriter(engine, Locale.ENGLISH).write(scenario));
    }

    private static String load() throws IOException {
        return Files.readString(Path.of("/proc/loadavg")).split(" ")[0];
    }

    private static void say(String what, List<Double> ms) {
        Collections.sort(ms);
        System.out.printf(
                Locale.ROOT,
                "%s: best %.1f ms, median %.1f ms, worst %.1f ms of %d%n",
                what,
                ms.get(0),
                ms.get(ms.size() / 2),
                ms.get(ms.size() - 1),
                ms.size());
    }

    private static JsonNode command(Browser browser, String name, String words) throws IOException {
        return browser.developer(name, (ObjectNode) JSON.readTree(words));
    }

    private static double taskS(Browser browser) throws IOException {
        for (JsonNode metric : command(browser, "Performance.getMetrics", "{}").path("metrics")) {
            if (metric.path("name").asText().equals("TaskDuration")) {
                return metric.path("value").asDouble();
            }
        }
        throw new IOException("no TaskDuration");
    }

    /** Writes which functions a start spends its time in, alone and with all that they call. */
    private static void profile(Browser browser, Path page, Path out) throws IOException {
        command(browser, "Profiler.enable", "{}");
        command(browser, "Profiler.setSamplingInterval", "{\"interval\":500}");
        command(browser, "Profiler.start", "{}");
        browser.go(page.toUri().toString());
        awaitAlive(browser);
        JsonNode profile = command(browser, "Profiler.stop", "{}").path("profile");
        Map<Integer, JsonNode> nodes = new HashMap<>();
        Map<Integer, Integer> parents = new HashMap<>();
        profile.path("nodes").forEach(node -> nodes.put(node.path("id").asInt(), node));
        nodes.forEach((id, node) -> node.path("children").forEach(child -> parents.put(child.asInt(), id)));
        Map<String, Double> alone = new HashMap<>();
        Map<String, Double> whole = new HashMap<>();
        for (int i = 0; i < profile.path("samples").size(); i++) {
            double ms = profile.path("timeDeltas").path(i).asDouble() / 1000;
            Integer at = profile.path("samples").path(i).asInt();
            alone.merge(name(nodes.get(at)), ms, Double::sum);
            List<String> seen = new ArrayList<>();
            for (Integer up = at; up != null; up = parents.get(up)) {
                String name = name(nodes.get(up));
                if (!seen.contains(name)) {
                    seen.add(name);
                    whole.merge(name, ms, Double::sum);
                }
            }
        }
        StringBuilder text = new StringBuilder();
        whole.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(300)
                .forEach(entry -> text.append(String.format(
                        Locale.ROOT,
                        "%8.1f %8.1f %s%n",
                        entry.getValue(),
                        alone.getOrDefault(entry.getKey(), 0.0),
                        entry.getKey())));
        Files.writeString(out, text);
    }

    private static String name(JsonNode node) {
        return node.path("callFrame").path("functionName").asText();
    }
}
