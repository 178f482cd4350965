package org.sagwise.web.lesson;

import java.util.List;
import org.sagwise.web.engine.Words;

/** Lessons speak of the window. What it alone has, or has elsewhere than a page, and what to do on the page instead. */
public final class OnThisPage {

    private static final List<String> COMMANDS = List.of("card", "delete", "flip", "compare", "post");

    private OnThisPage() {}

    /** What to do instead of each command of the window that a text names, as Markdown. */
    public static List<String> instead(String text, Words words) {
        return COMMANDS.stream()
                .filter(it ->
                        text.contains("*" + words.ui().say("command." + it).replace("_", "") + "*"))
                .map(it -> words.say("lesson.instead." + it))
                .toList();
    }
}
