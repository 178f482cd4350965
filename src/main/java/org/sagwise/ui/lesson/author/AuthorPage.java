package org.sagwise.ui.lesson.author;

import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.sagwise.scenario.Finding;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.ContentButton;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Everything that is to be mended in the lessons of one's own; pressing one goes to its step. */
public final class AuthorPage extends ColumnScroll {

    private final AuthorController desk;
    private final Runnable showLesson;
    private final Wording wording;
    private final VBox list = new VBox();

    /**
     * @param showLesson shows the lesson that runs
     */
    public AuthorPage(AuthorController desk, Runnable showLesson, Wording wording, Subscriptions subscriptions) {
        super(subscriptions, "examples");
        this.desk = desk;
        this.showLesson = showLesson;
        this.wording = wording;
        setId("author-page");
        list.getStyleClass().addAll("column", "lesson-list");
        setContent(list);
        subscriptions.watch(desk.lessonsProperty(), now -> show());
    }

    private void show() {
        list.getChildren().clear();
        if (desk.lessonsProperty().get().isEmpty()) {
            list.getChildren().add(WrappedLabel.of(wording.say("author.no-folder"), "quiet"));
        }
        desk.lessonsProperty().get().forEach(this::show);
    }

    private void show(OwnLesson own) {
        list.getChildren().add(WrappedLabel.of(own.checked().id(), "section-title"));
        int count = own.checked().faults().size();
        if (count == 0) {
            list.getChildren().add(WrappedLabel.of(wording.say("author.sound"), "lesson-done"));
        } else if (own.isBehind()) {
            String key = own.lesson().isPresent() ? "author.behind" : "author.broken";
            list.getChildren().add(WrappedLabel.of(wording.say(key, count), "lesson-trouble"));
        }
        Button edit = new Button(wording.say("author.edit"));
        Tip.put(edit, wording.say("author.edit.tip"));
        edit.setOnAction(event -> desk.edit(own));
        list.getChildren().add(edit);
        for (Finding fault : own.checked().faults()) {
            list.getChildren().add(entry(own, fault));
        }
    }

    private Button entry(OwnLesson own, Finding fault) {
        FaultButton button = new FaultButton(new FaultCard(fault, wording));
        boolean leads = own.lesson().isPresent() && own.checked().step(fault).isPresent();
        button.setOnAction(event -> {
            if (leads) {
                desk.show(own, own.checked().step(fault));
                showLesson.run();
            } else {
                desk.edit(own);
            }
        });
        Tip.put(button, wording.say(leads ? "author.go.tip" : "author.edit.tip"));
        return button;
    }

    /** As high as its words need that are wrapped to its width; a button itself would guess. */
    private static final class FaultButton extends ContentButton {

        FaultButton(FaultCard card) {
            setContent(card);
            getStyleClass().add("example");
            setAccessibleText(card.getAccessibleText());
        }
    }
}
