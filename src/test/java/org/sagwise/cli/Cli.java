package org.sagwise.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Calls the program as a shell would, in English, and keeps what it said. */
final class Cli {

    private Cli() {}

    /**
     * What came of a call.
     *
     * @param status exit status
     * @param out standard output
     * @param err standard error
     */
    record Outcome(int status, String out, String err) {

        JsonNode json() {
            try {
                return new ObjectMapper().readTree(out);
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        }
    }

    /** A call on a machine without a display. */
    static Outcome call(String... args) {
        return call(InputStream.nullInputStream(), new NoWindow(), args);
    }

    /** A call that finds a text on its standard input. */
    static Outcome callWithInput(String input, String... args) {
        byte[] bytes = input.getBytes(StandardCharsets.UTF_8);
        return call(new ByteArrayInputStream(bytes), new NoWindow(), args);
    }

    static Outcome call(InputStream in, WindowOpener opener, String... args) {
        List<String> all = new ArrayList<>(Arrays.asList(args));
        if (all.stream().noneMatch(arg -> arg.startsWith("--lang"))) {
            all.add("--lang=en");
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int status =
                SagwiseCommand.run(all.toArray(String[]::new), opener, new PrintWriter(out), new PrintWriter(err), in);
        return new Outcome(status, out.toString(), err.toString());
    }

    /** The path of a demo scenario. */
    static String demo(String name) {
        return Path.of("demo-scenarios", name + ".sagwise.json").toString();
    }

    /** A machine without a display. */
    static final class NoWindow implements WindowOpener {

        @Override
        public Optional<WindowObstacle> obstacle() {
            return Optional.of(WindowObstacle.NO_DISPLAY);
        }

        @Override
        public int open(WindowRequest request) {
            throw new AssertionError("there is no display");
        }
    }
}
