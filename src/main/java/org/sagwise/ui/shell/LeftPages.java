package org.sagwise.ui.shell;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.layout.BorderPane;
import org.sagwise.part.PartKind;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.inspector.CardPage;
import org.sagwise.ui.kit.Commands;
import org.sagwise.ui.kit.Controls;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.lesson.LessonColumn;
import org.sagwise.ui.lesson.LessonList;
import org.sagwise.ui.lesson.author.AuthorController;
import org.sagwise.ui.lesson.author.AuthorPage;
import org.sagwise.ui.lesson.author.AuthorStrip;
import org.sagwise.ui.lesson.author.OwnShelf;
import org.sagwise.ui.shell.LeftColumn.Page;
import org.sagwise.ui.start.ExampleBenches;
import org.sagwise.ui.start.ExamplesColumn;
import org.sagwise.ui.start.StartPage;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.workbench.ShelfColumn;

/** What the column at the left offers: something else while a lesson runs, and while one writes. */
final class LeftPages {

    private final LeftColumn column;
    private final CardPage card;
    private final AuthorStrip strip;
    private final LessonList lessons;
    private final BorderPane lesson;
    private final Models models;
    private final Wording wording;
    private final Subscriptions subscriptions;
    private final Supplier<ShelfColumn> shelf;

    /**
     * @param leave closes the column
     */
    LeftPages(
            Models models,
            Commands commands,
            Runnable leave,
            Controls controls,
            Wording wording,
            Subscriptions subscriptions) {
        this.models = models;
        this.wording = wording;
        this.subscriptions = subscriptions;
        column = new LeftColumn(leave, wording);
        card = new CardPage(models.bench().work(), models.shown().looks(), wording, subscriptions);
        shelf = column.add(
                Page.SHELF,
                () -> new ShelfColumn(models.offers().stock(), models.bench().work(), wording, subscriptions));
        column.add(Page.CARD, () -> card);
        column.add(Page.EXAMPLES, this::examples);
        lessons = lessons(commands, controls);
        column.add(Page.LESSONS, () -> lessons);
        AuthorController desk = models.lessons().author();
        strip = new AuthorStrip(desk, models.lessons().room(), () -> column.show(Page.AUTHOR), wording, subscriptions);
        lesson = new BorderPane(running(commands, controls));
        column.add(Page.LESSON, () -> lesson);
        column.add(Page.AUTHOR, () -> new AuthorPage(desk, () -> column.show(Page.LESSON), wording, subscriptions));
        subscriptions.watch(models.lessons().room().playerProperty().map(Optional::isPresent), now -> offer());
        subscriptions.onChange(desk.authoring(), this::offer);
        subscriptions.onChange(desk.folderProperty(), this::offer);
    }

    LeftColumn column() {
        return column;
    }

    /** Leaves only what is for a class while one looks on. */
    void project(boolean projected) {
        lesson.setBottom(projected ? null : strip);
        if (projected && column.page().filter(Page.AUTHOR::equals).isPresent()) {
            column.show(models.lessons().room().player().isPresent() ? Page.LESSON : Page.LESSONS);
        }
    }

    /** Shows the card of what is chosen, ready to be filled in. */
    void showCard() {
        column.show(Page.CARD);
        card.focusFirst();
    }

    /** Shows the shelf, ready to be searched. */
    void findPart() {
        column.show(Page.SHELF);
        shelf.get().focusSearch();
    }

    /** Shows the shelf, at the first part of a kind. */
    void lead(PartKind kind) {
        column.show(Page.SHELF);
        shelf.get().lead(kind);
    }

    /** Goes where a door of the opening page leads. */
    void enter(StartPage.Door door) {
        switch (door) {
            case LEARN -> {
                column.show(Page.LESSONS);
                lessons.focusFirst();
            }
            case BUILD -> {
                models.files().documents().openExample(Scenario.empty());
                column.show(Page.SHELF);
                if (models.bench().model().scenario().parts().isEmpty()) {
                    shelf.get().beginAnew();
                }
            }
            case EXPLAIN -> {
                ExampleBenches.named(door.example(), models.offers().examples())
                        .map(example -> example.scenario(wording.locale()))
                        .ifPresent(models.files().documents()::openExample);
                column.show(Page.EXAMPLES);
            }
        }
    }

    /** A lesson takes the place of everything else to choose from, but for the parts. */
    private void offer() {
        boolean teaching = models.lessons().room().player().isPresent();
        List<Page> pages = new ArrayList<>();
        if (teaching) {
            pages.addAll(List.of(Page.LESSON, Page.SHELF, Page.CARD));
        } else {
            pages.addAll(List.of(Page.SHELF, Page.CARD, Page.EXAMPLES, Page.LESSONS));
        }
        AuthorController desk = models.lessons().author();
        if (desk.authoring().getValue() && desk.folderProperty().get().isPresent()) {
            pages.add(Page.AUTHOR);
        }
        Page usual = teaching ? Page.LESSON : Page.EXAMPLES;
        Page shown = column.page().filter(it -> stays(it, teaching, pages)).orElse(usual);
        column.offer(shown, pages);
    }

    /** Whoever turns a switch stays where it is; a lesson that begins or ends leads elsewhere. */
    private static boolean stays(Page page, boolean lesson, List<Page> pages) {
        boolean leads = lesson ? page == Page.LESSONS : page == Page.LESSON;
        return pages.contains(page) && !leads && (page == Page.AUTHOR || page == Page.LESSONS);
    }

    private LessonList lessons(Commands commands, Controls controls) {
        Models.Lessons lessons = models.lessons();
        OwnShelf own = new OwnShelf(
                lessons.author(),
                lessons.room(),
                lessons.book(),
                commands,
                () -> column.show(Page.AUTHOR),
                controls,
                wording,
                subscriptions);
        return new LessonList(own, lessons.shelf(), lessons.room(), lessons.book(), wording, subscriptions);
    }

    private LessonColumn running(Commands commands, Controls controls) {
        Models.Lessons lessons = models.lessons();
        return new LessonColumn(
                lessons.room(),
                lessons.shelf(),
                lessons.desk(),
                models.shown().looks().projectorProperty(),
                commands,
                controls,
                wording,
                subscriptions);
    }

    private ExamplesColumn examples() {
        return new ExamplesColumn(
                models.offers().examples(),
                models.offers().thumbnails(),
                models.bench().model(),
                models.files().documents(),
                wording,
                subscriptions);
    }
}
