package org.sagwise.scenario;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the word that somebody probably meant. */
final class Nearest {

    private Nearest() {}

    /** The candidate fewest single-letter slips away, if that is at most a third of the word. */
    static Optional<String> to(String word, Collection<String> candidates) {
        int most = Math.max(1, word.length() / 3);
        return candidates.stream()
                .filter(candidate -> slips(word, candidate) <= most)
                .min(Comparator.comparingInt(candidate -> slips(word, candidate)));
    }

    /** Levenshtein's distance (V. I. Levenshtein, 1966), two rows at a time. */
    private static int slips(String a, String b) {
        int[] before = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] now = new int[b.length() + 1];
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int swap = before[j - 1] + (same(a.charAt(i - 1), b.charAt(j - 1)) ? 0 : 1);
                now[j] = Math.min(swap, Math.min(before[j], now[j - 1]) + 1);
            }
            before = now;
        }
        return before[b.length()];
    }

    private static boolean same(char a, char b) {
        return Character.toLowerCase(a) == Character.toLowerCase(b);
    }
}
