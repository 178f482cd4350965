package org.sagwise.web.page;

import java.util.List;
import java.util.function.IntConsumer;

/** The answers of a question, as large buttons. */
final class ChoicesTag {

    private ChoicesTag() {}

    /**
     * @param answers what they say, in the order in which they are shown
     * @param open whether one may be chosen
     * @param right place of the right one, if it is to be told; else −1
     * @param chosen place of the one that was chosen; −1 for none
     */
    static Tag of(List<String> answers, boolean open, int right, int chosen, IntConsumer choose) {
        Tag choices = Dom.tag("div", "choices", "");
        for (int i = 0; i < answers.size(); i++) {
            int place = i;
            boolean told = !open && i == right;
            String mark = told ? "✓ " : !open && i == chosen ? right >= 0 ? "✗ " : "• " : "";
            Tag button = Dom.button(
                    told ? "is-right" : !open && i == chosen ? "is-chosen" : "", "", () -> choose.accept(place));
            button.setId("choice-" + (i + 1));
            button.setDisabled(!open);
            button.appendChild(Dom.tag("span", "number", mark.isEmpty() ? (i + 1) + " " : mark));
            button.appendChild(Rich.inline("", answers.get(i)));
            choices.appendChild(button);
        }
        return choices;
    }
}
