package org.sagwise.web.page;

import org.sagwise.lesson.LessonPlayer;
import org.sagwise.lesson.Step;
import org.sagwise.text.LocalText;
import org.sagwise.web.engine.Words;
import org.sagwise.web.lesson.LessonRun;

/** A field for one's own words, a list to check them by, and one way to say it. What is written is not kept. */
final class WriteTag {

    private WriteTag() {}

    static Tag of(Step.Write step, LessonPlayer now, LessonRun run, Words words) {
        Tag own = Dom.tag("textarea", "", "");
        own.setId("lesson-own-words");
        own.setAttribute("rows", "5");
        own.setAttribute("aria-label", words.ui().say("lesson.write.field"));
        own.setValue(run.ownWords().getOrDefault(step.id(), ""));
        Tag room = Dom.tag("div", "write", own);
        room.appendChild(Dom.tag("p", "small", words.ui().say("lesson.write.field")));
        int number = 1;
        for (LocalText point : step.points()) {
            Tag box = Dom.tag("input", "", "");
            box.setAttribute("type", "checkbox");
            box.setId("point-" + number++);
            room.appendChild(Dom.tag("label", "tick", box, Rich.inline("", now.say(point))));
        }
        Tag model = Dom.tag("div", "reply", "");
        Tag show = Dom.button("", words.ui().say("lesson.write.model"), () -> Rich.fill(model, now.say(step.model())));
        show.setId("lesson-model");
        show.setDisabled(own.getValue().isBlank());
        own.addEventListener("input", event -> {
            run.ownWords().put(step.id(), own.getValue());
            show.setDisabled(own.getValue().isBlank());
        });
        room.appendChild(show);
        room.appendChild(model);
        return room;
    }
}
