package org.sagwise.lesson;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.text.Texts;

/**
 * A mistaken idea that people bring along; each wrong choice of a question stands for one, so that
 * answers tell what somebody thinks and not only that it is wrong. Each has a sentence in the
 * bundle {@code lesson-ideas}.
 */
public enum Idea {
    // About circuits, as learners of every age hold them.
    ONE_WIRE_IS_ENOUGH,
    TWO_CURRENTS_CLASH,
    CURRENT_IS_USED_UP,
    CURRENT_IS_SHARED_OUT,
    CELL_GIVES_FIXED_CURRENT,
    TWO_CELLS_TWICE_EVERYTHING,
    ONLY_DOWNSTREAM_FEELS_IT,
    ONLY_THAT_SPOT_FEELS_IT,
    NO_CURRENT_NO_VOLTS,
    VOLTS_AND_AMPS_ARE_ONE,
    MORE_COILS_MORE_OHMS,
    COUNT_OF_PARTS_DECIDES,
    PICTURE_TELLS_LAYOUT,
    BARE_WIRE_DOES_NOTHING,
    ANY_CONTACT_WILL_DO,
    RULE_IN_WRONG_PLACE,
    METER_STANDS_OUTSIDE,
    ENERGY_CURRENT_CHARGE_ARE_ONE,
    ON_AND_OFF_MIXED_UP,
    PARALLEL_ALWAYS_STRONGER,
    CURRENTS_NEED_NOT_ADD_UP,
    CELL_SHOWS_ITS_LABEL_VOLTS,
    ORDER_IN_RING_MATTERS,
    CELL_IS_A_TANK,
    // About packs, as hobby builders hold them.
    SERIES_IS_MORE_DANGEROUS,
    PARALLEL_DOUBLES_LIMIT,
    DROP_IS_THE_DEVICES_FAULT,
    CAPACITY_DOUBLES_IN_SERIES,
    PULSE_RATING_IS_THE_RATING,
    LABEL_IS_THE_RATING,
    PROTECTED_CURES_ALL,
    LOW_VOLTS_ALLOW_LOW_OHMS,
    FRESH_CELL_RESCUES_FLAT_ONE,
    REVERSED_IN_SERIES_IS_HARMLESS,
    REVERSED_IN_PARALLEL_WAITS_FOR_BUTTON,
    SERIES_SPARES_THE_CELLS,
    MORE_CELLS_MORE_WATTS,
    FULL_VOLTS_MEAN_GOOD_CELL,
    MOST_CAPACITY_IS_BEST,
    THICK_WIRE_CURES_SAG,
    TORN_WRAP_IS_COSMETIC,
    COIL_FITS_ANY_LAYOUT,
    AMPS_ACROSS_A_CELL_TEST_IT,
    WEAK_FEELING_WARNS_IN_TIME,
    WATTS_FROM_REST_VOLTS,
    SAME_TYPE_MEANS_MATCHED,
    /** No idea behind it: a slip of the decimal point or of a sign. */
    SLIP;

    /** The word for it in a lesson file, such as {@code one-wire-is-enough}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** The idea in one sentence, as those who hold it would say it. */
    public String sentence(Locale locale) {
        return Texts.in("lesson-ideas", locale).say(word());
    }

    public static Optional<Idea> ofWord(String word) {
        return Stream.of(values()).filter(idea -> idea.word().equals(word)).findFirst();
    }
}
