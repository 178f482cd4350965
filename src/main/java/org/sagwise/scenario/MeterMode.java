package org.sagwise.scenario;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

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

    /** What a part is turned to; empty if it is no meter. */
    public static Optional<MeterMode> of(Part part) {
        return part.kind() == PartKind.METER ? Optional.of(of(part.keys())) : Optional.empty();
    }

    /** Volts where the keys say nothing else. */
    static MeterMode of(Keys keys) {
        return keys.text(KEY)
                .flatMap(word ->
                        Stream.of(values()).filter(m -> m.word().equals(word)).findFirst())
                .orElse(VOLTS);
    }

    /** Whether a part is a meter that is turned to this. */
    public boolean isOf(Part part) {
        return of(part).filter(this::equals).isPresent();
    }
}
