package org.sagwise.cli;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import org.sagwise.text.Printable;
import org.sagwise.text.Signs;

/**
 * Writes JSON (RFC 8259) for other programs: numbers in full double precision, {@code null} for
 * what is not known, keys always in the same order.
 */
final class JsonWriter {

    private final JsonGenerator generator;

    private JsonWriter(JsonGenerator generator) {
        this.generator = generator;
    }

    /**
     * Writes one JSON text and a line break after it.
     *
     * @param target is flushed and stays open
     * @param signs whether characters beyond ASCII are written as they are or escaped
     */
    static void write(Writer target, Signs signs, Consumer<JsonWriter> content) {
        StringWriter text = new StringWriter();
        run(() -> {
            JsonGenerator generator = new JsonFactory().createGenerator(text);
            generator.configure(JsonGenerator.Feature.AUTO_CLOSE_TARGET, false);
            generator.configure(JsonWriteFeature.ESCAPE_NON_ASCII.mappedFeature(), signs == Signs.ASCII);
            generator.setPrettyPrinter(new JsonLayout());
            content.accept(new JsonWriter(generator));
            generator.writeRaw('\n');
            generator.close();
            target.write(unsteered(text.toString()));
        });
    }

    /**
     * A JSON text in which nothing steers a terminal: what would is written as an escape, which means the same. Such
     * signs stand in strings alone.
     */
    static String unsteered(String json) {
        StringBuilder shown = new StringBuilder(json.length());
        json.codePoints().forEach(sign -> {
            if (Printable.steers(sign) && sign != '\n' && sign != '\t') {
                for (char half : Character.toChars(sign)) {
                    shown.append(String.format(Locale.ROOT, "\\u%04x", (int) half));
                }
            } else {
                shown.appendCodePoint(sign);
            }
        });
        return shown.toString();
    }

    /** An object without a name: the whole text, or an item of a list. */
    void object(Runnable keys) {
        run(generator::writeStartObject);
        keys.run();
        run(generator::writeEndObject);
    }

    void object(String name, Runnable keys) {
        name(name);
        object(keys);
    }

    /** A list of objects. */
    <T> void objects(String name, List<T> items, Consumer<T> keys) {
        name(name);
        run(generator::writeStartArray);
        items.forEach(item -> object(() -> keys.accept(item)));
        run(generator::writeEndArray);
    }

    void texts(String name, List<String> items) {
        name(name);
        run(generator::writeStartArray);
        items.forEach(item -> run(() -> generator.writeString(item)));
        run(generator::writeEndArray);
    }

    /** A list of whole numbers. */
    void numbers(String name, List<Integer> items) {
        name(name);
        run(generator::writeStartArray);
        items.forEach(item -> run(() -> generator.writeNumber(item)));
        run(generator::writeEndArray);
    }

    void text(String name, String text) {
        run(() -> generator.writeStringField(name, text));
    }

    void flag(String name, boolean flag) {
        run(() -> generator.writeBooleanField(name, flag));
    }

    void whole(String name, int number) {
        run(() -> generator.writeNumberField(name, number));
    }

    /** A number; {@code null} if it is not known or not finite; zero has no sign. */
    void number(String name, double number) {
        if (Double.isFinite(number)) {
            run(() -> generator.writeNumberField(name, number + 0.0));
        } else {
            nothing(name);
        }
    }

    void nothing(String name) {
        run(() -> generator.writeNullField(name));
    }

    private void name(String name) {
        run(() -> generator.writeFieldName(name));
    }

    private static void run(Step step) {
        try {
            step.take();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private interface Step {
        void take() throws IOException;
    }
}
