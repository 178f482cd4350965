package org.sagwise.report.handout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.sagwise.lesson.ClassRecord;
import org.sagwise.report.handout.Handout.Frame;
import org.sagwise.report.handout.Handout.Item;
import org.sagwise.text.Texts;

/** What a class has met and missed in lessons that were played as pages, on paper; with the codes, to be counted again. */
public final class ClassRecordPage {

    private ClassRecordPage() {}

    public static Handout of(ClassRecord record, Locale locale) {
        Texts texts = Texts.in("ideas-check", locale);
        List<Item> items = new ArrayList<>();
        for (ClassRecord.OfLesson lesson : record.lessons()) {
            String head = texts.say("codes.lesson", lesson.lesson().title().in(locale), lesson.learners());
            String ideas = lesson.ideas().stream()
                    .map(it -> "\n- " + idea(it, texts, locale))
                    .collect(Collectors.joining());
            items.add(Item.text("**" + head + "**\n" + ideas, Frame.NONE));
        }
        items.add(Item.text(texts.say("codes.about"), Frame.NONE));
        items.add(Item.text(
                record.codes().stream().map(code -> "`" + code.text() + "`").collect(Collectors.joining("\n\n")),
                Frame.BOX));
        return new Handout(
                locale,
                texts.say("class.title"),
                texts.say("codes.line", record.codes().size()),
                items,
                Texts.in("notices", locale).say("export.line"));
    }

    /** How often an idea was met and missed, in a line. */
    public static String idea(ClassRecord.Count count, Texts texts, Locale locale) {
        return texts.say("codes.idea", count.missed(), count.met(), count.idea().sentence(locale));
    }
}
