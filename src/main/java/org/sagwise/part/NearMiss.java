package org.sagwise.part;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Finds what somebody probably meant when a name is unknown. */
public final class NearMiss {

    private static final int MOST = 3;

    /** Names of one or two letters are all near to one another, so none is likely meant. */
    private static final int SHORTEST = 3;

    /** A longer text is no name; comparing it would take long. */
    private static final int LONGEST = 100;

    private NearMiss() {}

    /**
     * The known names nearest to {@code wanted}, nearest first, at most three. Case does not count.
     * A name is near when a third of its letters or fewer have to be changed, or when one contains
     * the other. Empty when nothing is near.
     */
    public static List<String> of(String wanted, Collection<String> known) {
        String sought = wanted.toLowerCase(Locale.ROOT).strip();
        if (sought.isEmpty()) {
            return List.of();
        }
        record Scored(String name, int distance) {}
        return known.stream()
                .map(name -> new Scored(name, score(sought, name.toLowerCase(Locale.ROOT))))
                .filter(scored -> scored.distance() < Integer.MAX_VALUE)
                .sorted(Comparator.comparingInt(Scored::distance).thenComparing(Scored::name))
                .limit(MOST)
                .map(Scored::name)
                .toList();
    }

    private static int score(String sought, String name) {
        int longer = Math.max(sought.length(), name.length());
        int shorter = Math.min(sought.length(), name.length());
        if (shorter < SHORTEST) {
            return sought.equals(name) ? 0 : Integer.MAX_VALUE;
        }
        int allowed = Math.max(1, longer / 3);
        boolean contained = name.contains(sought) || sought.contains(name);
        if (longer - shorter > allowed && !contained || longer > LONGEST) {
            return Integer.MAX_VALUE;
        }
        int distance = distance(sought, name);
        return distance <= allowed || contained ? distance : Integer.MAX_VALUE;
    }

    /**
     * Number of single-letter insertions, deletions, replacements and swaps of neighbours that turn
     * one word into the other (optimal string alignment distance; Damerau 1964, Levenshtein 1966).
     */
    static int distance(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] row = new int[b.length() + 1];
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            beforeLast = last;
            last = row;
        }
        return last[b.length()];
    }
}
