package org.sagwise.scenario;

import java.util.List;
import java.util.Locale;
import org.sagwise.text.Texts;

/** A kind of thing that can be wrong with a document; each has a sentence in a bundle. */
public interface Fault {

    /** Its name: programs and tests compare it, people read the sentence. */
    String name();

    /** The bundle that holds its sentence. */
    String bundle();

    /** The key of its sentence. */
    default String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What is wrong and what would be right, without the place.
     *
     * @param place where it was found
     * @param details what fills the blanks of the sentence, in order
     */
    default String sentence(String place, List<String> details, Locale locale) {
        return Texts.in(bundle(), locale).say(key(), details.toArray());
    }
}
