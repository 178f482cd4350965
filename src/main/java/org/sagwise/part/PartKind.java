package org.sagwise.part;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.key.EffectiveKeys;
import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;

/** The kinds of part. What each is stands in its {@link KindDescriptor}. */
public enum PartKind {
    CELL(CellKind.DESCRIPTOR),
    COIL(CoilKind.DESCRIPTOR),
    SWITCH(SwitchKind.DESCRIPTOR),
    FUSE(FuseKind.DESCRIPTOR),
    PTC(PtcKind.DESCRIPTOR),
    REVERSE_GUARD(ReverseGuardKind.DESCRIPTOR),
    BOARD(BoardKind.DESCRIPTOR),
    CHARGER(ChargerKind.DESCRIPTOR),
    SUPPLY(SupplyKind.DESCRIPTOR),
    RESISTOR(ResistorKind.DESCRIPTOR),
    METER(MeterKind.DESCRIPTOR);

    private final KindDescriptor descriptor;

    PartKind(KindDescriptor descriptor) {
        this.descriptor = descriptor;
    }

    /** What a part of this kind is. */
    public KindDescriptor descriptor() {
        return descriptor;
    }

    /** The terminals, the one first from which current through the part is counted. */
    public List<String> terminals() {
        return descriptor.terminals();
    }

    /** What it is for in a circuit. */
    public Role role() {
        return descriptor.role();
    }

    /** The word for this kind in a scenario file. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** What ids of such parts begin with, where they do not have a letter. */
    public String idStem() {
        return descriptor.isLettered() ? word() : descriptor.idStem().orElse(word());
    }

    /** What keys a part of this kind may have, besides {@code id}, {@code kind}, {@code label}. */
    public List<KeySpec> keys() {
        return descriptor.keys().specs();
    }

    /** Whether such a part may have a key of this name. */
    public boolean has(String key) {
        return descriptor.keys().find(key).isPresent();
    }

    /**
     * What holds for a part of this kind.
     *
     * @param own what it says itself
     * @param model what its model says; none without a model
     * @param around what holds around it, such as the temperature
     */
    public EffectiveKeys effective(Keys own, Keys model, Keys around) {
        return EffectiveKeys.of(descriptor.keys(), own, model, around);
    }

    public static Optional<PartKind> ofWord(String word) {
        return Stream.of(values()).filter(kind -> kind.word().equals(word)).findFirst();
    }

    public static List<String> words() {
        return Stream.of(values()).map(PartKind::word).toList();
    }
}
