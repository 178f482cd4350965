package org.sagwise.report.compare;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.reading.Bench;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;

/**
 * A scenario with every value said: those of models and those that go without saying. Two parts
 * that are alike then say the same, however they were written.
 */
final class Plain {

    /** The values of the model stand for it, and the rest volts for the charge. */
    private static final List<String> SAID_OTHERWISE = List.of("model", "charge");

    private static final MathContext DIGITS = new MathContext(9);

    private final Bench bench;

    private Plain(Bench bench) {
        this.bench = bench;
    }

    static Scenario of(Bench bench) {
        Plain plain = new Plain(bench);
        return bench.scenario()
                .withParts(bench.scenario().parts().stream().map(plain::part).toList());
    }

    private Part part(Part part) {
        Keys all = bench.values(part.id()).all();
        Map<String, Object> said = new TreeMap<>(all.values());
        part.kind()
                .keys()
                .forEach(spec -> said.computeIfPresent(
                        spec.name(), (name, value) -> rounded(value, spec, bench.values(part.id()))));
        part.keys().text("label").ifPresent(label -> said.put("label", label));
        SAID_OTHERWISE.forEach(said::remove);
        Part plain = Part.of(part.id(), part.kind());
        for (var entry : said.entrySet()) {
            plain = plain.with(entry.getKey(), entry.getValue());
        }
        return plain;
    }

    /**
     * Without the last digits that binary numbers leave behind; a nested object without what is usual
     * in it.
     */
    private static Object rounded(Object value, KeySpec spec, EffectiveKeys values) {
        if (value instanceof Double number) {
            return BigDecimal.valueOf(number).round(DIGITS).doubleValue();
        } else if (value instanceof Keys group && spec.type() instanceof KeySpec.GroupType type) {
            Map<String, Object> inner = new LinkedHashMap<>(group.values());
            for (KeySpec key : type.keys()) {
                inner.computeIfPresent(key.name(), (name, it) -> rounded(it, key, values));
                values.usual(key).ifPresent(usual -> inner.remove(key.name(), usual));
            }
            return new Keys(inner);
        }
        return value;
    }
}
