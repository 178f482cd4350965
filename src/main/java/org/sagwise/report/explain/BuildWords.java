package org.sagwise.report.explain;

import java.util.Locale;
import org.sagwise.quantity.Digits;
import org.sagwise.quantity.Unit;
import org.sagwise.scenario.Link;
import org.sagwise.scenario.Part;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** Parts and joints of a scenario in words, for whoever writes about it. */
public final class BuildWords {

    private final Speech speech;
    private final JointWords joints;

    private BuildWords(Speech speech) {
        this.speech = speech;
        this.joints = new JointWords(speech);
    }

    public static BuildWords of(Scenario scenario, Locale locale, Signs signs) {
        return new BuildWords(Speech.of(scenario, locale, signs));
    }

    /** A text of the bundle {@code report}. */
    public String say(String key, Object... words) {
        return speech.say(key, words);
    }

    /** Whether the bundle has such a text. */
    public boolean has(String key) {
        return speech.texts().has(key);
    }

    /** The same with a capital letter in front. */
    public String sentence(String key, Object... words) {
        return speech.sentence(speech.say(key, words));
    }

    public String print(double value, Unit unit) {
        return speech.print(value, unit);
    }

    /** What a sentence calls a part; empty for no part. */
    public String name(String id) {
        return speech.name(id);
    }

    /** A number without a unit, with every digit that it was written with. */
    public String printAll(double written) {
        return speech.format().number(written, Digits.atMostSignificant(12));
    }

    /** How a link joins what: a sentence without a point. */
    public String joint(Link link) {
        return joints.sentence(link);
    }

    /** A sentence about a part. */
    public String partOnly(String key, Part part) {
        return sentence(key, name(part.id()));
    }
}
