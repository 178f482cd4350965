package org.sagwise.ui.frame;

import org.sagwise.scenario.Scenario;
import org.sagwise.ui.card.CardPage;
import org.sagwise.ui.command.Controls;
import org.sagwise.ui.demo.ExamplesColumn;
import org.sagwise.ui.lesson.LessonColumn;
import org.sagwise.ui.lesson.LessonCommands;
import org.sagwise.ui.lesson.LessonList;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.shelf.ShelfColumn;
import org.sagwise.ui.text.Wording;

import java.util.Locale;

/** What the column at the left holds, and which page of it is turned up when. */
final class LeftPages {

    private final Models models;
    private final Locale locale;
    private final LeftColumn column;
    private final CardPage card;

    /**
     * @param handTo puts a part from the shelf into the hand over the bench
     */
    LeftPages(
            Models models,
            LessonCommands lesson,
            ShelfColumn.Track handTo,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        locale = wording.locale();
        column = new LeftColumn(wording);
        card = new CardPage(models.work(), wording, subscriptions);
        column.add(
                LeftColumn.Page.SHELF,
                new ShelfColumn(models.stock(), models.work(), handTo, wording, subscriptions));
        column.add(LeftColumn.Page.CARD, card);
        column.add(
                LeftColumn.Page.EXAMPLES,
                new ExamplesColumn(
                        models.examples(),
                        models.thumbnails(),
                        models.bench(),
                        models.documents(),
                        wording,
                        subscriptions));
        Models.Lessons lessons = models.lessons();
        column.add(
                LeftColumn.Page.LESSONS,
                new LessonList(
                        lessons.shelf(), lessons.room(), lessons.book(), wording, subscriptions));
        column.add(
                LeftColumn.Page.LESSON,
                new LessonColumn(
                        lessons.room(),
                        lessons.shelf(),
                        lessons.desk(),
                        lesson,
                        controls,
                        wording,
                        subscriptions));
    }

    LeftColumn column() {
        return column;
    }

    /** Shows the card of what is chosen, ready to be filled in. */
    void showCard() {
        column.show(LeftColumn.Page.CARD);
        card.focusFirst();
    }

    /** A lesson takes the place of everything else to choose from, but for the parts. */
    void turnTo(boolean lesson) {
        if (lesson) {
            column.offer(
                    LeftColumn.Page.LESSON,
                    LeftColumn.Page.LESSON,
                    LeftColumn.Page.SHELF,
                    LeftColumn.Page.CARD);
        } else {
            column.offer(
                    LeftColumn.Page.EXAMPLES,
                    LeftColumn.Page.SHELF,
                    LeftColumn.Page.CARD,
                    LeftColumn.Page.EXAMPLES,
                    LeftColumn.Page.LESSONS);
        }
    }

    /** Goes where a door of the opening page leads. */
    void enter(DoorsDialog.Door door) {
        switch (door) {
            case LEARN -> column.show(LeftColumn.Page.LESSONS);
            case BUILD -> {
                models.documents().openExample(Scenario.empty());
                column.show(LeftColumn.Page.SHELF);
            }
            case EXPLAIN -> {
                models.examples().stream()
                        .filter(example -> example.name().equals(door.example()))
                        .findFirst()
                        .map(example -> example.scenario(locale))
                        .ifPresent(models.documents()::openExample);
                column.show(LeftColumn.Page.EXAMPLES);
            }
        }
    }
}
