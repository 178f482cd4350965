package org.sagwise.ui.kit;

import java.text.Normalizer;
import java.util.Locale;
import java.util.regex.Pattern;
import org.sagwise.ui.text.Wording;

/** Names for new files, made of what they hold, so that people know them again in a folder. */
public final class FileNames {

    /** A decimal mark belongs to its number. */
    private static final Pattern BETWEEN_WORDS =
            Pattern.compile("(?:[^\\p{L}\\p{M}\\p{N}.,]|(?<!\\p{N})[.,]|[.,](?!\\p{N}))+");

    /** What Windows keeps for its devices, whatever ending follows. */
    private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)\\p{N}");

    /** Enough to tell one from another, and to be read in a dialog. */
    private static final int MOST_LETTERS = 60;

    private FileNames() {}

    /** A name without an ending: the words of a title, or a word of the language where it has none. */
    public static String of(String title, Wording wording) {
        String words = words(title);
        String bench = words(wording.say("files.name"));
        if (words.isEmpty()) {
            return bench;
        }
        return DEVICE.matcher(words).matches() ? bench + "-" + words : words;
    }

    private static String words(String title) {
        String whole = Normalizer.normalize(title, Normalizer.Form.NFC)
                .replace("Ω", "ohm")
                .toLowerCase(Locale.ROOT);
        StringBuilder name = new StringBuilder();
        for (String word : BETWEEN_WORDS.split(whole)) {
            if (name.length() > 0 && name.length() + word.length() >= MOST_LETTERS) {
                break;
            }
            name.append(name.length() == 0 || word.isEmpty() ? "" : "-").append(word);
        }
        int end = Math.min(name.length(), MOST_LETTERS);
        boolean splitsASign = end < name.length() && Character.isLowSurrogate(name.charAt(end));
        return name.substring(0, splitsASign ? end - 1 : end);
    }
}
