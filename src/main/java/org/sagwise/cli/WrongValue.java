package org.sagwise.cli;

import java.util.List;
import org.sagwise.part.NearMiss;
import org.sagwise.text.Texts;

/** Says that an option cannot have a value, which ones it can have, and which was probably meant. */
final class WrongValue {

    private WrongValue() {}

    static String words(Texts texts, String option, String value, List<String> known) {
        String wrong = texts.say("wrong.value", option, value, String.join(", ", known));
        List<String> near = NearMiss.of(value, known);
        return near.isEmpty() ? wrong : wrong + " " + texts.say("wrong.meant", String.join(", ", near));
    }
}
