package org.sagwise.report.symptom;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.scenario.Names;
import org.sagwise.text.Signs;
import org.sagwise.text.Texts;

/**
 * What is answered to somebody who wrote what does not work.
 *
 * @param cause the cause that the numbers show, or that they show none
 * @param test how to find it with a meter; empty for words that mean no known symptom
 */
public record SymptomAnswer(String cause, Optional<String> test) {

    /** Of a long message so many words are said again. */
    private static final int MOST_WORDS = 10;

    /** Usual causes that are named where a bench shows none. */
    private static final int MOST_CAUSES = 3;

    /**
     * The answer to what somebody wrote.
     *
     * @param evidence what the bench shows
     * @param signs whether more than ASCII may be used
     */
    public static SymptomAnswer to(String asked, Evidence evidence, Locale locale, Signs signs) {
        Speaker speaker = new Speaker(evidence, Texts.in("symptoms", locale), new QuantityFormat(locale, signs));
        return Symptom.meantBy(asked)
                .map(symptom -> speaker.answer(symptom, brief(asked)))
                .orElseGet(
                        () -> new SymptomAnswer(speaker.texts.say("answer.unknown", brief(asked)), Optional.empty()));
    }

    private record Speaker(Evidence evidence, Texts texts, QuantityFormat format) {

        SymptomAnswer answer(Symptom symptom, String asked) {
            for (Cause cause : symptom.causes()) {
                Optional<List<Object>> sign = cause.sign().apply(evidence);
                if (sign.isPresent()) {
                    Object[] told = sign.get().stream().map(this::word).toArray();
                    return new SymptomAnswer(
                            texts.say("answer.fits", asked, texts.say("cause." + cause.id(), told)),
                            Optional.of(test(cause)));
                }
            }
            List<String> usual = symptom.causes().stream()
                    .limit(MOST_CAUSES)
                    .map(cause -> texts.say("name." + cause.id()))
                    .toList();
            return new SymptomAnswer(
                    texts.say("answer.none", asked, Names.in(texts.locale()).list(usual)),
                    Optional.of(test(symptom.causes().get(0))));
        }

        /** Nobody should press something that could hurt, only to find out. */
        private String test(Cause cause) {
            boolean hurts = evidence.assessment().cautions().stream()
                    .anyMatch(caution -> caution.signal().isGrave());
            return texts.say(hurts ? "test.cells-out" : "test." + cause.id());
        }

        private String word(Object told) {
            return told instanceof Evidence.Number number
                    ? format.print(number.value(), number.unit())
                    : Names.in(texts.locale()).word(told);
        }
    }

    private static String brief(String asked) {
        List<String> words = List.of(asked.strip().split("\\s+"));
        return words.size() <= MOST_WORDS
                ? String.join(" ", words)
                : String.join(" ", words.subList(0, MOST_WORDS)) + " …";
    }
}
