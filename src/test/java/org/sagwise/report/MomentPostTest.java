package org.sagwise.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.sagwise.assessment.Assessment;
import org.sagwise.assessment.Moment;
import org.sagwise.file.ShareText;
import org.sagwise.quantity.QuantityFormat;
import org.sagwise.quantity.Unit;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.post.PostFormat;
import org.sagwise.run.RunPlan;
import org.sagwise.run.RunState;
import org.sagwise.run.Runner;
import org.sagwise.scenario.Press;
import org.sagwise.scenario.Scenario;
import org.sagwise.text.Signs;

/** A post tells the numbers of the moment that was asked for, and says of which they are. */
class MomentPostTest {

    private static final Scenario SCENARIO = Stories.story("new-and-worn-in-series");
    private static final double HALF_AN_HOUR_S = 1800;

    private static Assessment start() {
        return Assessment.of(SCENARIO, Stories.CATALOGUE);
    }

    private static Moment later() {
        Assessment start = start();
        RunState last =
                Runner.run(start.bench(), RunPlan.USUAL.until(HALF_AN_HOUR_S)).last();
        return new Moment(start.at(last.states(), last.press()), last.timeS());
    }

    private static String post(Moment moment, PostFormat format, Locale locale) {
        return ExplainedPost.write(moment, format, ShareText::of, locale, Signs.PRINT);
    }

    private static String wattsOf(Moment moment) {
        double watts = moment.with(Press.HELD).assessment().readings().pack().deliveredW();
        return QuantityFormat.forPeople(Locale.ENGLISH).print(watts, Unit.WATT);
    }

    @Test
    void post_ofTheStart_isTheSameWhateverTheClockShows() {
        assertEquals(
                post(Moment.start(start()), PostFormat.TEXT, Locale.ENGLISH),
                post(Moment.start(later().assessment()), PostFormat.TEXT, Locale.ENGLISH));
    }

    @Test
    void post_ofAMoment_namesItAndTellsItsNumbers() {
        Moment later = later();
        String post = post(later, PostFormat.TEXT, Locale.ENGLISH);
        assertTrue(post.contains("With the button held, 30 min after the start:"), post);
        assertTrue(post.contains(wattsOf(later)), post);
        assertFalse(wattsOf(later).equals(wattsOf(Moment.start(start()))), "time changes watts");
        assertTrue(post.contains(ShareText.of(SCENARIO).orElseThrow().substring(0, 60)), post);
        String german = post(later, PostFormat.TEXT, Locale.GERMAN);
        assertTrue(german.contains("Mit gedrücktem Taster, 30 min nach dem Start:"), german);
    }

    @Test
    void html_ofAMoment_namesItInThePicture() {
        String html = post(later(), PostFormat.HTML, Locale.ENGLISH);
        assertTrue(html.contains(">button held, 30 min after the start<"), "in the SVG");
    }
}
