package org.sagwise.report.symptom;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.part.PartKind;
import org.sagwise.text.Texts;

/** What people write when something does not work as it should, the likelier causes first. */
public enum Symptom {
    UNEVEN_GLOW(Causes.COIL_DEAD, Causes.COIL_JOINT, Causes.COIL_OHMS),
    FLICKERS(Causes.JOINT, Causes.BUTTON, Causes.OPEN, Causes.GUARD, Causes.BOARD_STOPS),
    CUTS_OUT(
            Causes.BOARD_EARLY,
            Causes.BOARD_STOPS,
            Causes.GUARD,
            Causes.PTC,
            Causes.FUSE,
            Causes.CUTOFF_EARLY,
            Causes.WEAKEST),
    NOTHING(Causes.REVERSED_ROW, Causes.OPEN, Causes.BYPASSED, Causes.BOARD_STOPS, Causes.GUARD, Causes.EMPTY),
    WEAK(
            Causes.REVERSED_ROW,
            Causes.JOINT,
            Causes.WIRE,
            Causes.BUTTON,
            Causes.BOARD_STOPS,
            Causes.COLD,
            Causes.SAG,
            Causes.EMPTY,
            Causes.MANY_OHMS),
    SHORT_LIFE(
            Causes.RING,
            Causes.DRAIN,
            Causes.WEAKEST,
            Causes.WORN,
            Causes.CLAIMS,
            Causes.COLD,
            Causes.CUTOFF_EARLY,
            Causes.SAG,
            Causes.JOINT,
            Causes.BY_DESIGN),
    DRAINS(Causes.RING, Causes.SHORTED, Causes.STUCK, Causes.DRAIN),
    FIRES_ALONE(Causes.STUCK),
    UNEVEN_CELLS(
            Causes.RING, Causes.REVERSED_ROW, Causes.UNEQUAL, Causes.SHARE, Causes.WEAKEST, Causes.WORN, Causes.CLAIMS),
    WRONG_VOLTS(Causes.REVERSED_ROW, Causes.RING, Causes.SHORTED, Causes.OPEN, Causes.EMPTY),
    SAGS(Causes.COLD, Causes.SAG, Causes.JOINT, Causes.WIRE, Causes.BUTTON, Causes.OVER_LIMIT, Causes.EMPTY),
    HOT_JOINT(Causes.RING, Causes.SHORTED, Causes.JOINT, Causes.BUTTON, Causes.WIRE),
    HOT_WIRE(Causes.RING, Causes.SHORTED, Causes.BYPASSED, Causes.WIRE),
    HOT_CHARGING(Causes.CHARGER, Causes.OVERCHARGED, Causes.RING, Causes.DRIVEN_BACKWARDS, Causes.UNEQUAL),
    HOT_CELL(
            Causes.RING,
            Causes.SHORTED,
            Causes.BYPASSED,
            Causes.DRIVEN_BACKWARDS,
            Causes.OVER_LIMIT,
            Causes.CHARGER,
            Causes.STUCK,
            Causes.CELL_HEAT),
    HOT_COIL(Causes.STUCK, Causes.COIL_OVER, Causes.OVER_LIMIT),
    FUSE_OPENS(Causes.FUSE, Causes.PTC, Causes.GUARD, Causes.SHORTED, Causes.BYPASSED, Causes.OVER_LIMIT),
    METER_ODD(Causes.METER, Causes.OPEN, Causes.REVERSED_ROW);

    private final List<Cause> causes;

    Symptom(Cause... causes) {
        this.causes = List.of(causes);
    }

    List<Cause> causes() {
        return causes;
    }

    /** Key of its texts. */
    String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How people put it. */
    public String title(Locale locale) {
        return Texts.in("symptoms", locale).say(word());
    }

    /** The symptoms that a bench explains: what its owner would sooner or later write. */
    public static List<Symptom> shownBy(Evidence evidence) {
        List<Symptom> shown = new ArrayList<>();
        for (Symptom symptom : values()) {
            if (symptom.canShow(evidence)
                    && symptom.causes.stream()
                            .filter(cause -> cause != Causes.BY_DESIGN)
                            .anyMatch(cause -> cause.sign().apply(evidence).isPresent())) {
                shown.add(symptom);
            }
        }
        return List.copyOf(shown);
    }

    /** Nobody complains of what is not there. */
    private boolean canShow(Evidence evidence) {
        return switch (this) {
            case HOT_CHARGING -> evidence.has(PartKind.CHARGER) || evidence.has(PartKind.SUPPLY);
            case METER_ODD -> evidence.has(PartKind.METER);
            default -> true;
        };
    }

    /** Which of them somebody's words mean, in whatever language of the program; empty if none. */
    public static Optional<Symptom> meantBy(String words) {
        return Wordings.meant(words);
    }
}
