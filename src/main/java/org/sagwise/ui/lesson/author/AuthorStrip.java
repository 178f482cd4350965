package org.sagwise.ui.lesson.author;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.sagwise.lesson.LessonPlayer;
import org.sagwise.scenario.Finding;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.lesson.LessonSession;
import org.sagwise.ui.text.Wording;

/**
 * Under a step of a lesson of one's own while one writes it: where the step stands in the file, and
 * what is to be mended in it.
 */
public final class AuthorStrip extends VBox {

    private static final int FIRST = 3;

    private final AuthorController desk;
    private final LessonSession room;
    private final Wording wording;
    private final Label where = label("author-where", "fault-place");
    private final Label state = label("author-state", "author-state");
    private final VBox faults = new VBox();
    private final ScrollPane scroll = new ScrollPane(faults);
    private final Button all = new Button();

    /**
     * @param showAll shows everything that is to be mended
     */
    public AuthorStrip(
            AuthorController desk, LessonSession room, Runnable showAll, Wording wording, Subscriptions subscriptions) {
        this.desk = desk;
        this.room = room;
        this.wording = wording;
        setId("author-strip");
        getStyleClass().add("author-strip");
        faults.setId("author-faults");
        faults.getStyleClass().add("faults");
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.getStyleClass().addAll("plain-scroll", "author-scroll");
        Button edit = new Button(wording.say("author.edit"));
        edit.setId("author-edit");
        Tip.put(edit, wording.say("author.edit.tip"));
        edit.setOnAction(event -> desk.running().ifPresent(desk::edit));
        all.setId("author-all");
        Tip.put(all, wording.say("author.all.tip"));
        all.setOnAction(event -> showAll.run());
        FlowPane buttons = new FlowPane(edit, all);
        buttons.setAlignment(Pos.CENTER_LEFT);
        buttons.getStyleClass().add("lesson-helps");
        getChildren().addAll(where, state, scroll, buttons);
        subscriptions.watch(desk.authoring(), now -> update());
        subscriptions.onChange(room.playerProperty(), this::update);
        subscriptions.onChange(desk.lessonsProperty(), this::update);
        subscriptions.onChange(desk.goneProperty(), this::update);
    }

    private static Label label(String id, String style) {
        Label label = WrappedLabel.of("");
        label.setId(id);
        label.getStyleClass().add(style);
        return label;
    }

    private void update() {
        Optional<OwnLesson> own = desk.authoring().getValue() ? desk.running() : Optional.empty();
        setVisible(own.isPresent());
        setManaged(own.isPresent());
        if (own.isPresent() && room.player().isPresent()) {
            show(own.get(), room.player().get());
        }
    }

    private void show(OwnLesson own, LessonPlayer now) {
        String step = now.step().id();
        List<Finding> here = own.checked().faultsOf(step);
        List<Finding> shown = own.isBehind() && here.isEmpty() ? first(own) : here;
        int count = own.checked().faults().size();
        boolean known = !own.isBehind() || own.checked().position(step).isPresent();
        where.setVisible(known);
        where.setManaged(known);
        where.setText(own.checked()
                .position(step)
                .map(at -> wording.say("author.where", String.valueOf(at.line()), String.valueOf(at.column()), step))
                .orElseGet(() -> wording.say("author.where.gone", step)));
        state.setText(state(own, here.size(), count));
        state.getStyleClass().setAll("label", count == 0 ? "lesson-done" : "lesson-trouble");
        faults.getChildren()
                .setAll(shown.stream().map(it -> new FaultCard(it, wording)).toList());
        scroll.setVisible(!shown.isEmpty());
        scroll.setManaged(!shown.isEmpty());
        all.setText(wording.say("author.all", count));
        all.setDisable(count == 0);
    }

    /** What keeps a file from being read often belongs to no step, and comes first of all. */
    private static List<Finding> first(OwnLesson own) {
        return own.checked().faults().stream().limit(FIRST).toList();
    }

    private String state(OwnLesson own, int here, int all) {
        if (desk.goneProperty().get()) {
            return wording.say("author.gone");
        }
        if (own.isBehind()) {
            return wording.say("author.behind", all);
        }
        return all == 0 ? wording.say("author.sound") : wording.say("author.count", here, all - here);
    }
}
