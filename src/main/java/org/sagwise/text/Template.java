package org.sagwise.text;

import java.util.Optional;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sentence with named places: {@code {name}}, or {@code {name|words if it is not known}}. */
public final class Template {

    private static final Pattern PLACE = Pattern.compile("\\{(\\w+)(?:\\|([^}]*))?}");

    private Template() {}

    /**
     * Fills a sentence in. A word that begins a sentence gets a capital letter.
     *
     * @param value what stands for a name; empty where it is not known
     * @param unknown what to say then, if the sentence has no words for it
     */
    public static String fill(String template, Function<String, Optional<String>> value, String unknown) {
        StringBuilder text = new StringBuilder();
        Matcher place = PLACE.matcher(template);
        int end = 0;
        while (place.find()) {
            text.append(template, end, place.start());
            String otherwise = place.group(2) == null ? unknown : place.group(2);
            text.append(capital(text, value.apply(place.group(1)).orElse(otherwise)));
            end = place.end();
        }
        return text.append(template, end, template.length()).toString();
    }

    private static String capital(StringBuilder before, String words) {
        String start = before.toString().stripTrailing();
        boolean begins = start.isEmpty() || start.endsWith(".");
        return begins && !words.isEmpty() ? Character.toUpperCase(words.charAt(0)) + words.substring(1) : words;
    }
}
