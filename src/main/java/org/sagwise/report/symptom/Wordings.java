package org.sagwise.report.symptom;

import java.text.Normalizer;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.text.Languages;
import org.sagwise.text.Texts;

/**
 * Finds the symptom that somebody's words mean. A symptom has wordings in every language, each a few beginnings of
 * words that must all occur; the wording with most letters of them wins.
 */
final class Wordings {

    /** A longer beginning counts inside a word too: German builds long words of short ones. */
    private static final int LONG_ENOUGH = 5;

    private Wordings() {}

    static Optional<Symptom> meant(String text) {
        List<String> words = words(text);
        Symptom best = null;
        int most = 0;
        for (Symptom symptom : Symptom.values()) {
            for (Locale locale : Languages.locales()) {
                String all = Texts.in("symptoms", locale).say(symptom.word() + ".words");
                for (String wording : all.split(";")) {
                    int letters = letters(words(wording), words);
                    if (letters > most) {
                        most = letters;
                        best = symptom;
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private static int letters(List<String> wording, List<String> words) {
        boolean all = wording.stream().allMatch(part -> words.stream().anyMatch(word -> fits(part, word)));
        return all ? wording.stream().mapToInt(String::length).sum() : 0;
    }

    private static boolean fits(String part, String word) {
        return word.startsWith(part) || part.length() >= LONG_ENOUGH && word.contains(part);
    }

    /** Lower-case words without marks: ä is a. */
    private static List<String> words(String text) {
        String plain = Normalizer.normalize(text, Normalizer.Form.NFKD)
                .replaceAll("\\p{M}+|['’]", "")
                .replace("ß", "ss")
                .toLowerCase(Locale.ROOT);
        return Arrays.stream(plain.split("[^\\p{L}\\p{Nd}]+"))
                .filter(word -> !word.isEmpty())
                .toList();
    }
}
