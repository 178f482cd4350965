package org.sagwise.web;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;

/**
 * A real browser on this machine, steered by the W3C's WebDriver: Chromium by its driver over HTTP,
 * Firefox by the Marionette that every Firefox has in it, since the driver that libraries want beside it
 * is not among Debian's packages. Downloads nothing, and lets nothing out of the machine: its proxy is a
 * closed port.
 */
final class Browser implements AutoCloseable {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final int PATIENCE_S = 30;

    /** A whole answer of a page takes a second; on a busy machine, and of a large bench, a minute. */
    private static final int SCRIPT_S = 300;

    /** The browsers that are tried. */
    enum Kind {
        CHROMIUM("chromium", "chromedriver"),
        FIREFOX("firefox-esr");

        private final List<String> programs;

        Kind(String... programs) {
            this.programs = List.of(programs);
        }

        /** Whether it is installed here. */
        boolean isHere() {
            return programs.stream().allMatch(program -> place(program) != null);
        }

        private static Path place(String program) {
            return Stream.of(System.getenv("PATH").split(":"))
                    .map(folder -> Path.of(folder, program))
                    .filter(Files::isExecutable)
                    .findFirst()
                    .orElse(null);
        }
    }

    /** One command and its answer. */
    private interface Wire extends AutoCloseable {
        JsonNode send(String command, String path, ObjectNode words) throws IOException;

        @Override
        default void close() throws IOException {}
    }

    private final Process program;
    private final Wire wire;

    private Browser(Process program, Wire wire) {
        this.program = program;
        this.wire = wire;
    }

    /**
     * Opens a browser that has never been used.
     *
     * @param profile an empty folder for it
     */
    static Browser open(Kind kind, Path profile, int width, int height, boolean touch) throws IOException {
        Files.createDirectories(profile);
        Browser browser =
                kind == Kind.CHROMIUM ? chromium(profile, width, height, touch) : firefox(profile, width, height);
        browser.wire.send(
                "WebDriver:SetTimeouts", "/timeouts", JSON.createObjectNode().put("script", 1000 * SCRIPT_S));
        return browser;
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private static Browser chromium(Path profile, int width, int height, boolean touch) throws IOException {
        int port = freePort();
        Process driver = new ProcessBuilder("chromedriver", "--port=" + port)
                .redirectErrorStream(true)
                .redirectOutput(profile.resolve("driver.log").toFile())
                .start();
        String base = "http://127.0.0.1:" + port + "/session";
        HttpClient http = HttpClient.newHttpClient();
        ObjectNode wanted = JSON.createObjectNode();
        ObjectNode options = wanted.putObject("capabilities")
                .putObject("alwaysMatch")
                .put("browserName", "chrome")
                .putObject("goog:chromeOptions");
        options.put("binary", Kind.place("chromium").toString());
        var args = options.putArray("args");
        Stream.of(
                        "--headless=new",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-dev-shm-usage",
                        "--proxy-server=127.0.0.1:9",
                        "--disable-background-networking",
                        "--user-data-dir=" + profile.resolve("profile"),
                        "--window-size=" + width + "," + height)
                .forEach(args::add);
        if (touch) {
            options.putObject("mobileEmulation")
                    .putObject("deviceMetrics")
                    .put("width", width)
                    .put("height", height)
                    .put("pixelRatio", 2)
                    .put("touch", true);
        }
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        while (true) {
            try {
                String id = post(http, base, wanted).path("sessionId").asText();
                return new Browser(driver, (command, path, words) -> post(http, base + "/" + id + path, words));
            } catch (java.net.ConnectException early) {
                if (System.nanoTime() > end || !driver.isAlive()) {
                    throw early;
                }
                pause();
            }
        }
    }

    private static JsonNode post(HttpClient http, String address, ObjectNode words) throws IOException {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address))
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString(words.toString()))
                .build();
        try {
            JsonNode answer = JSON.readTree(
                            http.send(request, BodyHandlers.ofString()).body())
                    .path("value");
            if (answer.has("error")) {
                throw new IOException(answer.path("error").asText() + ": "
                        + answer.path("message").asText());
            }
            return answer;
        } catch (InterruptedException stopped) {
            throw new IOException(stopped);
        }
    }

    private static Browser firefox(Path profile, int width, int height) throws IOException {
        int port = freePort();
        Files.writeString(
                profile.resolve("user.js"),
                "user_pref(\"marionette.port\", " + port + ");\n"
                        + "user_pref(\"network.proxy.type\", 1);\n"
                        + "user_pref(\"network.proxy.http\", \"127.0.0.1\");\nuser_pref(\"network.proxy.http_port\", 9);\n"
                        + "user_pref(\"network.proxy.ssl\", \"127.0.0.1\");\nuser_pref(\"network.proxy.ssl_port\", 9);\n"
                        + "user_pref(\"app.update.enabled\", false);\nuser_pref(\"browser.shell.checkDefaultBrowser\", false);\n"
                        + "user_pref(\"datareporting.policy.dataSubmissionEnabled\", false);\n"
                        + "user_pref(\"toolkit.telemetry.reportingpolicy.firstRun\", false);\n"
                        + "user_pref(\"security.sandbox.content.level\", 0);\n");
        ProcessBuilder builder = new ProcessBuilder(
                        "firefox-esr",
                        "--headless",
                        "--marionette",
                        "--no-remote",
                        "--profile",
                        profile.toString(),
                        "--width",
                        String.valueOf(width),
                        "--height",
                        String.valueOf(height))
                .redirectErrorStream(true)
                .redirectOutput(profile.resolve("firefox.log").toFile());
        builder.environment().put("HOME", profile.toString());
        builder.environment().put("MOZ_HEADLESS_WIDTH", String.valueOf(width));
        builder.environment().put("MOZ_HEADLESS_HEIGHT", String.valueOf(height));
        Process program = builder.start();
        Marionette wire = Marionette.at(port, program);
        wire.send("WebDriver:NewSession", "", JSON.createObjectNode());
        return new Browser(program, wire);
    }

    /** Firefox's own protocol: a length, a colon, and an array of JSON. */
    private static final class Marionette implements Wire {
        private final Socket socket;
        private final InputStream in;
        private int number;

        private Marionette(Socket socket) throws IOException {
            this.socket = socket;
            in = socket.getInputStream();
            read();
        }

        static Marionette at(int port, Process program) throws IOException {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
            while (true) {
                try {
                    return new Marionette(new Socket(InetAddress.getLoopbackAddress(), port));
                } catch (java.net.ConnectException early) {
                    if (System.nanoTime() > end || !program.isAlive()) {
                        throw early;
                    }
                    pause();
                }
            }
        }

        private JsonNode read() throws IOException {
            int length = 0;
            for (int sign = in.read(); sign != ':'; sign = in.read()) {
                if (sign < 0) {
                    throw new IOException("the browser has gone");
                }
                length = 10 * length + sign - '0';
            }
            return JSON.readTree(in.readNBytes(length));
        }

        @Override
        public JsonNode send(String command, String path, ObjectNode words) throws IOException {
            byte[] message = JSON.createArrayNode()
                    .add(0)
                    .add(++number)
                    .add(command)
                    .add(words)
                    .toString()
                    .getBytes(StandardCharsets.UTF_8);
            socket.getOutputStream().write((message.length + ":").getBytes(StandardCharsets.US_ASCII));
            socket.getOutputStream().write(message);
            JsonNode answer = read();
            if (!answer.get(2).isNull()) {
                throw new IOException(answer.get(2).toString());
            }
            JsonNode result = answer.get(3);
            return result.isObject() && result.has("value") ? result.get("value") : result;
        }

        @Override
        public void close() throws IOException {
            socket.close();
        }
    }

    void go(String address) throws IOException {
        wire.send("WebDriver:Navigate", "/url", JSON.createObjectNode().put("url", address));
    }

    /** What a script in the page returns; its arguments are texts. */
    JsonNode run(String script, String... arguments) throws IOException {
        ObjectNode words = JSON.createObjectNode().put("script", script);
        var args = words.putArray("args");
        Stream.of(arguments).forEach(args::add);
        return wire.send("WebDriver:ExecuteScript", "/execute/sync", words);
    }

    /**
     * A command of Chromium's developer tools and its answer.
     *
     * @param name as the DevTools Protocol has it, e.g. {@code Emulation.setCPUThrottlingRate}
     */
    JsonNode developer(String name, ObjectNode arguments) throws IOException {
        ObjectNode words = JSON.createObjectNode().put("cmd", name).set("params", arguments);
        return wire.send("", "/goog/cdp/execute", words);
    }

    /** Waits until a condition in the page holds, and all is said anew that was to be. */
    void await(String condition) throws IOException {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        String calm = "!document.querySelector('[aria-busy=true]') && ";
        while (!run("return Boolean(" + calm + "(" + condition + "));").asBoolean()) {
            if (System.nanoTime() > end) {
                throw new IOException("never came true: " + condition);
            }
            pause();
        }
    }

    /** The other side needs the processor, too. */
    private static void pause() {
        LockSupport.parkNanos(20_000_000);
    }

    /** Opens what is folded, whose content is said only then. */
    void unfold(String part, String content) throws IOException {
        run("document.querySelector('#' + arguments[0] + ' details').open = true;", part);
        await("document.querySelector('" + content + "')");
    }

    String text(String id) throws IOException {
        return run("return document.getElementById(arguments[0]).innerText;", id)
                .asText();
    }

    /** Where an element lies after it was scrolled into view: x and y of its middle. */
    private int[] middle(String id) throws IOException {
        JsonNode at = run(
                "var t = document.getElementById(arguments[0]); t.scrollIntoView({block: 'center'});"
                        + "var r = t.getBoundingClientRect(); return [r.x + r.width / 2, r.y + r.height / 2];",
                id);
        return new int[] {(int) at.get(0).asDouble(), (int) at.get(1).asDouble()};
    }

    /**
     * Holds a button, and sees a condition in the page come true meanwhile. Firefox loses the end of a touch that comes
     * while the page is still busy with its beginning; Chromium's driver sends no end without a beginning.
     */
    void holdUntil(String pointer, String id, String condition) throws IOException {
        List<ObjectNode> down = List.of(
                move(middle(id)),
                JSON.createObjectNode().put("type", "pointerDown").put("button", 0));
        List<ObjectNode> up =
                List.of(JSON.createObjectNode().put("type", "pointerUp").put("button", 0));
        if (wire instanceof Marionette) {
            act(pointer, down);
            await(condition);
            act(pointer, up);
        } else {
            run("window.came = false; window.watch = setInterval(function () { window.came = window.came || ("
                    + condition + "); }, 5);");
            ObjectNode pause = JSON.createObjectNode().put("type", "pause").put("duration", 400);
            act(
                    pointer,
                    Stream.of(down, List.of(pause), up).flatMap(List::stream).toList());
            await("window.came");
            run("clearInterval(window.watch);");
        }
    }

    private static ObjectNode move(int[] at) {
        return JSON.createObjectNode()
                .put("type", "pointerMove")
                .put("duration", 0)
                .put("x", at[0])
                .put("y", at[1]);
    }

    void tap(String pointer, String id) throws IOException {
        act(
                pointer,
                List.of(
                        move(middle(id)),
                        JSON.createObjectNode().put("type", "pointerDown").put("button", 0),
                        JSON.createObjectNode().put("type", "pointerUp").put("button", 0)));
        await("true");
    }

    private void act(String pointer, List<ObjectNode> steps) throws IOException {
        ObjectNode words = JSON.createObjectNode();
        ObjectNode source =
                words.putArray("actions").addObject().put("type", "pointer").put("id", pointer);
        source.putObject("parameters").put("pointerType", pointer);
        var list = source.putArray("actions");
        steps.forEach(list::add);
        wire.send("WebDriver:PerformActions", "/actions", words);
    }

    /** Presses keys down and up one after the other; one that begins with + is only pressed, with − only let go. */
    void keys(String... keys) throws IOException {
        ObjectNode words = JSON.createObjectNode();
        var list = words.putArray("actions")
                .addObject()
                .put("type", "key")
                .put("id", "keys")
                .putArray("actions");
        for (String key : keys) {
            boolean half = key.length() > 1;
            String value = half ? key.substring(1) : key;
            if (!half || key.charAt(0) == '+') {
                list.addObject().put("type", "keyDown").put("value", value);
            }
            if (!half || key.charAt(0) == '-') {
                list.addObject().put("type", "keyUp").put("value", value);
            }
        }
        wire.send("WebDriver:PerformActions", "/actions", words);
        await("true");
    }

    /** A picture of what is seen, PNG. */
    byte[] picture() throws IOException {
        // Chromium's driver wants GET here; a script of ours never needs a picture from it.
        return Base64.getDecoder()
                .decode(wire.send("WebDriver:TakeScreenshot", "/screenshot", JSON.createObjectNode())
                        .asText());
    }

    /** Addresses that the page has asked for, by the browser's own book: none but itself, if all is well. */
    List<String> requests() throws IOException {
        List<String> all = new ArrayList<>();
        run("return performance.getEntriesByType('resource').map(function (e) { return e.name; });")
                .forEach(name -> all.add(name.asText()));
        all.removeIf(name -> name.startsWith("data:") || name.startsWith("blob:"));
        return all;
    }

    @Override
    public void close() throws IOException {
        try {
            wire.send("Marionette:Quit", "/nothing", JSON.createObjectNode());
        } catch (IOException gone) {
            // Whichever way it goes, it goes.
        }
        wire.close();
        List<ProcessHandle> all = Stream.concat(program.descendants(), Stream.of(program.toHandle()))
                .toList();
        all.forEach(ProcessHandle::destroy);
        for (ProcessHandle each : all) {
            try {
                each.onExit().get(10, TimeUnit.SECONDS);
            } catch (InterruptedException | ExecutionException | TimeoutException late) {
                each.destroyForcibly();
            }
        }
    }
}
