package org.sagwise.cli;

import java.util.Locale;

/** How constants of the program are written in JSON and in the keys of texts. */
final class Words {

    private Words() {}

    /** {@code AT_REST} is written {@code at-rest}. */
    static String of(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
