package org.sagwise.text;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.MissingResourceException;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The patterns of one file of texts in one language, over the English ones. Read by ourselves: a
 * {@link java.util.ResourceBundle} answers in the machine's language where a translation is missing,
 * unless it is told otherwise in a way that does not exist in a browser.
 */
final class Bundle {

    /** What has been read: files of the program, which do not change while it runs. */
    private static final Map<String, Bundle> READ = new ConcurrentHashMap<>();

    private final String name;
    private final Map<String, String> patterns;

    private Bundle(String name, Map<String, String> patterns) {
        this.name = name;
        this.patterns = patterns;
    }

    /**
     * @param path folder and name of the file, without language and ending
     * @throws MissingResourceException if there is no such file in English
     */
    static Bundle of(String path, Locale locale) {
        String own = path + "_" + locale.getLanguage();
        Bundle known = READ.get(own);
        if (known == null) {
            known = read(path, own);
            READ.put(own, known);
        }
        return known;
    }

    private static Bundle read(String path, String own) {
        Map<String, String> patterns = new HashMap<>();
        if (!add(path, patterns)) {
            throw new MissingResourceException("no texts at " + path, path, "");
        }
        add(own, patterns);
        return new Bundle(path, patterns);
    }

    private static boolean add(String path, Map<String, String> patterns) {
        try (InputStream file = Bundle.class.getResourceAsStream(path + ".properties")) {
            if (file == null) {
                return false;
            }
            PropertyLines.of(new String(file.readAllBytes(), StandardCharsets.UTF_8), patterns::put);
            return true;
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    boolean has(String key) {
        return patterns.containsKey(key);
    }

    /** @throws MissingResourceException if there is nothing under this key */
    String pattern(String key) {
        return Optional.ofNullable(patterns.get(key))
                .orElseThrow(() -> new MissingResourceException("no text " + key + " at " + name, name, key));
    }
}
