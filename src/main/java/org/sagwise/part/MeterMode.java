package org.sagwise.part;

import java.util.Locale;
import java.util.stream.Stream;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.Keys;

/** What a meter is turned to, be it one that stays on the bench or the one in the hand. */
public enum MeterMode {
    VOLTS,
    AMPS,
    OHMS;

    /** The key that says it, of a meter and of the probes. */
    public static final String KEY = "mode";

    /** The word for it in a scenario file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static String[] words() {
        return Stream.of(values()).map(MeterMode::word).toArray(String[]::new);
    }

    /** What a meter with these values is turned to. */
    public static MeterMode of(EffectiveKeys meter) {
        return valueOf(meter.word(KEY).orElseThrow().toUpperCase(Locale.ROOT));
    }

    /** Volts where the keys say nothing else. */
    public static MeterMode of(Keys keys) {
        return keys.text(KEY)
                .flatMap(word ->
                        Stream.of(values()).filter(m -> m.word().equals(word)).findFirst())
                .orElse(VOLTS);
    }
}
