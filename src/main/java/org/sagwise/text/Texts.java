package org.sagwise.text;

import java.text.MessageFormat;
import java.util.Locale;

/**
 * The sentences of one bundle in one language.
 *
 * <p>Bundles lie in {@code org/sagwise/texts}, UTF-8, with patterns as {@link MessageFormat} reads
 * them: an apostrophe is written twice. A language that a bundle lacks is answered in English,
 * whatever the machine's own language is. What a bundle leaves out is looked for in {@code kinds}: what kinds of part and
 * their keys are called, wherever they are spoken of.
 */
public final class Texts {

    private static final String FOLDER = "/org/sagwise/texts/";

    private static final String SHARED = FOLDER + "kinds";

    private final Bundle bundle;
    private final Bundle shared;
    private final Locale locale;

    private Texts(String path, Locale locale) {
        this.bundle = Bundle.of(path, locale);
        this.shared = Bundle.of(SHARED, locale);
        this.locale = locale;
    }

    /**
     * The bundle of this name in this language, or in English if it is not translated.
     *
     * @param name file name without folder, language and ending, e.g. {@code quantity}
     * @throws java.util.MissingResourceException if there is no such bundle at all
     */
    public static Texts in(String name, Locale locale) {
        return at(FOLDER + name, locale);
    }

    /**
     * A bundle that lies elsewhere.
     *
     * @param path folder and file name, without language and ending
     * @throws java.util.MissingResourceException if there is no such bundle at all
     */
    public static Texts at(String path, Locale locale) {
        return new Texts(path, locale);
    }

    /**
     * The sentence under this key, filled in.
     *
     * @param words what replaces {@code {0}}, {@code {1}} …; numbers are written by locale
     * @throws java.util.MissingResourceException if neither the bundle nor that of the kinds has such a key
     */
    public String say(String key, Object... words) {
        String pattern = raw(key);
        return isPlain(pattern) ? pattern : new MessageFormat(pattern, locale).format(words);
    }

    /** Most sentences have nothing to be filled in, and to take a pattern apart is slow in a browser. */
    private static boolean isPlain(String pattern) {
        return pattern.indexOf('{') < 0 && pattern.indexOf('}') < 0 && pattern.indexOf('\'') < 0;
    }

    /**
     * What stands under this key, to the letter: for patterns that are filled in another way.
     *
     * @throws java.util.MissingResourceException if neither the bundle nor that of the kinds has such a key
     */
    public String raw(String key) {
        return (bundle.has(key) ? bundle : shared).pattern(key);
    }

    /** Whether there is a sentence under this key. */
    public boolean has(String key) {
        return bundle.has(key) || shared.has(key);
    }

    public Locale locale() {
        return locale;
    }
}
