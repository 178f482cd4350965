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
        return write(moment, format, shareText, Wish.LONG, locale, signs);
    }

    /** How much a post tells. */
    public enum Size {
        /** All there is. */
        LONG,
        /** The answer in at most 150 words. */
        SHORT
    }

    /**
     * What a post shall be.
     *
     * @param asked what somebody wrote that does not work, which the post answers
     * @param page where the bench's live page is, an address or the name of a file that goes along
     */
    public record Wish(Size size, Optional<String> asked, Optional<String> page) {

        /** All there is, to nobody's question. */
        public static final Wish LONG = new Wish(Size.LONG, Optional.empty(), Optional.empty());
    }

    /** Writes a post as it is wished. */
    public static String write(
            Moment moment,
            PostFormat format,
            Function<Scenario, Optional<String>> shareText,
            Wish wish,
            Locale locale,
            Signs signs) {
        return format.write(blocks(moment, format, shareText, wish, locale, signs, Code.DRAWN), locale, signs);
    }

    /** Whether the share text is drawn as a code that a camera reads, too. */
    private enum Code {
        DRAWN,
        /** Who reads a page has it on a screen already, and it would be the largest picture. */
        LEFT_OUT
    }

    /** A long post as HTML to stand in another page, without the code for a camera. */
    public static String htmlBody(
            Moment moment, Function<Scenario, Optional<String>> shareText, Locale locale, Signs signs) {
        List<Block> post = blocks(moment, PostFormat.HTML, shareText, Wish.LONG, locale, signs, Code.LEFT_OUT);
        return PostFormat.htmlBody(post, locale, signs);
    }

    private static List<Block> blocks(
            Moment moment,
            PostFormat format,
            Function<Scenario, Optional<String>> shareText,
            Wish wish,
            Locale locale,
            Signs signs,
            Code code) {
        Assessment assessment = Moment.start(moment.assessment()).assessment();
        Optional<Cure> cure = Cure.of(assessment);
        Optional<String> text = shareText.apply(assessment.scenario());
        InlinePictures pictures = new InlinePictures(locale);
        Explanation.Materials materials = new Explanation.Materials(
                text,
                cure,
                cure.flatMap(it -> shareText.apply(it.after().scenario())),
                format.hasPictures() ? pictures.of(moment, cure) : List.of(),
                text.filter(it -> format.hasPictures() && code == Code.DRAWN)
                        .flatMap(it -> pictures.code(it, assessment.scenario().title())),
                moment,
                wish.asked(),
                wish.page());
        return wish.size() == Size.SHORT
                ? Explanation.brief(assessment, materials, locale, signs)
                : Explanation.of(assessment, materials, locale, signs);
    }
}
