package org.sagwise.report.explain;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.report.post.Block;
import org.sagwise.report.post.PostFormat;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** Writes the post that explains a bench, with all that belongs in it. */
public final class ExplainedPost {

    private ExplainedPost() {}

    /**
     * Writes a post. Looks for a cure and runs the bench down, so it may take a while.
     *
     * @param moment whose numbers are told; all else is about the bench at its start
     * @param shareText makes share text of a scenario; empty for one that is too large
     */
    public static String write(
            Moment moment,
            PostFormat format,
            Function<Scenario, Optional<String>> shareText,
            Locale locale,
            Signs signs) {
        return write(moment, format, shareText, Size.LONG, Optional.empty(), locale, signs);
    }

    /** How much a post tells. */
    public enum Size {
        /** All there is. */
        LONG,
        /** The answer in at most 150 words. */
        SHORT
    }

    /**
     * Writes a post of either size.
     *
     * @param asked what somebody wrote that does not work, which the post answers
     */
    public static String write(
            Moment moment,
            PostFormat format,
            Function<Scenario, Optional<String>> shareText,
            Size size,
            Optional<String> asked,
            Locale locale,
            Signs signs) {
        Assessment assessment = Moment.start(moment.assessment()).assessment();
        Optional<Cure> cure = Cure.of(assessment);
        Optional<String> text = shareText.apply(assessment.scenario());
        InlinePictures pictures = new InlinePictures(locale);
        Explanation.Materials materials = new Explanation.Materials(
                text,
                cure,
                cure.flatMap(it -> shareText.apply(it.after().scenario())),
                format.hasPictures() ? pictures.of(moment, cure) : List.of(),
                text.filter(it -> format.hasPictures())
                        .flatMap(it -> pictures.code(it, assessment.scenario().title())),
                moment,
                asked);
        List<Block> post = size == Size.SHORT
                ? Explanation.brief(assessment, materials, locale, signs)
                : Explanation.of(assessment, materials, locale, signs);
        return format.write(post, locale, signs);
    }
}
