package org.sagwise.scenario.edit;

import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * Sets what is written about the bench.
 *
 * @param title one line, at most 200 characters; the rest is cut off
 * @param about Markdown, at most 20,000 characters; the rest is cut off
 */
public record SetTexts(String title, String about) implements Edit {

    public SetTexts {
        title = ScenarioKeys.TITLE.cut(title);
        about = ScenarioKeys.ABOUT.cut(about);
    }

    @Override
    public Scenario apply(Scenario before) {
        return before.withTitle(title).withAbout(about);
    }

    @Override
    public EditName name(Scenario before) {
        return EditName.of(title.equals(before.title()) ? "about" : "title");
    }
}
