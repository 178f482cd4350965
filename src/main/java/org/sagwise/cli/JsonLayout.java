package org.sagwise.cli;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import java.io.IOException;
import java.io.Serializable;

/** Lays JSON out so that a person can read it too: one line a part, a link, a caution. */
final class JsonLayout extends DefaultPrettyPrinter {

    private static final long serialVersionUID = 1L;

    /** What lies deeper stands on one line. */
    private static final int DEEPEST_BROKEN = 2;

    JsonLayout() {
        super(Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER));
        indentObjectsWith(new ShallowIndenter());
        indentArraysWith(new ShallowIndenter());
    }

    private JsonLayout(JsonLayout base) {
        super(base);
    }

    @Override
    public DefaultPrettyPrinter createInstance() {
        return new JsonLayout(this);
    }

    @Override
    public void beforeObjectEntries(JsonGenerator generator) throws IOException {
        if (_nesting <= DEEPEST_BROKEN) {
            super.beforeObjectEntries(generator);
        }
    }

    @Override
    public void beforeArrayValues(JsonGenerator generator) throws IOException {
        if (_nesting <= DEEPEST_BROKEN) {
            super.beforeArrayValues(generator);
        }
    }

    @Override
    public void writeEndObject(JsonGenerator generator, int entries) throws IOException {
        if (_nesting > DEEPEST_BROKEN) {
            _nesting--;
            generator.writeRaw('}');
        } else {
            super.writeEndObject(generator, entries);
        }
    }

    @Override
    public void writeEndArray(JsonGenerator generator, int items) throws IOException {
        if (_nesting > DEEPEST_BROKEN || items == 0) {
            _nesting--;
            generator.writeRaw(']');
        } else {
            super.writeEndArray(generator, items);
        }
    }

    private static final class ShallowIndenter implements Indenter, Serializable {

        private static final long serialVersionUID = 1L;

        @Override
        public void writeIndentation(JsonGenerator generator, int level) throws IOException {
            if (level <= DEEPEST_BROKEN) {
                generator.writeRaw('\n');
                generator.writeRaw("  ".repeat(level));
            } else {
                generator.writeRaw(' ');
            }
        }

        @Override
        public boolean isInline() {
            return false;
        }
    }
}
