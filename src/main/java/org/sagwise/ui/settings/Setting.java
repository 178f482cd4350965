package org.sagwise.ui.settings;

import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * One thing that is kept from one start of the program to the next.
 *
 * @param key its name in the settings file
 * @param usual its value until somebody chooses another
 * @param read from plain data as JSON has it; empty for data that makes no sense
 * @param write into plain data as JSON has it
 */
record Setting<T>(String key, T usual, Function<Object, Optional<T>> read, Function<T, Object> write) {

    /** A setting that is one of a few words. */
    static <E extends Enum<E>> Setting<E> choice(String key, E usual) {
        E[] all = usual.getDeclaringClass().getEnumConstants();
        return new Setting<>(
                key,
                usual,
                plain -> Stream.of(all).filter(each -> word(each).equals(plain)).findFirst(),
                Setting::word);
    }

    /** A setting that is a text. */
    static Setting<String> text(String key, String usual) {
        return new Setting<>(
                key, usual, plain -> plain instanceof String text ? Optional.of(text) : Optional.empty(), text -> text);
    }

    /** A setting that is a number within bounds. */
    static Setting<Double> number(String key, double usual, double least, double most) {
        return new Setting<>(
                key,
                usual,
                plain -> plain instanceof Number number && number.doubleValue() >= least && number.doubleValue() <= most
                        ? Optional.of(number.doubleValue())
                        : Optional.empty(),
                number -> number);
    }

    private static String word(Enum<?> each) {
        return each.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
