package org.sagwise.ui.lesson;

import java.io.File;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.file.Saved;
import org.sagwise.file.ScenarioFiles;
import org.sagwise.lesson.IdeasCheck;
import org.sagwise.lesson.IdeasCheck.Form;
import org.sagwise.lesson.IdeasCheck.Objective;
import org.sagwise.lesson.Lesson;
import org.sagwise.lesson.Step;
import org.sagwise.report.handout.Handout;
import org.sagwise.report.handout.HandoutHtml;
import org.sagwise.report.handout.IdeasCheckPages;
import org.sagwise.ui.kit.ColumnScroll;
import org.sagwise.ui.kit.FileNames;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/** A window with the check of ideas: before, after, and for who leads a class its gain. Nothing leaves the machine. */
public final class IdeasCheckWindow {

    private static final double WIDTH = 640;
    private static final double HEIGHT = 680;

    private final SideWindows windows;
    private final ProgressBook book;
    private final Supplier<List<Lesson>> known;
    private final Wording wording;
    private final Label said = WrappedLabel.of("", "check-said");
    private final SideWindow window = new SideWindow();

    /**
     * @param known the lessons that learners' codes may be of
     */
    public IdeasCheckWindow(SideWindows windows, ProgressBook book, Supplier<List<Lesson>> known, Wording wording) {
        this.windows = windows;
        this.book = book;
        this.known = known;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        window.show(this::open);
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        TabPane tabs = new TabPane();
        tabs.setId("ideas-check");
        for (Form form : Form.values()) {
            tabs.getTabs().add(tab(form == Form.A ? "check.early" : "check.late", form(form), subscriptions));
        }
        ClassGainPane gain = new ClassGainPane(wording, this::save);
        ClassCodesPane codes = new ClassCodesPane(known, this::save, gain::fill, wording);
        tabs.getTabs().add(tab("check.class", gain, subscriptions));
        tabs.getTabs().add(tab("check.codes", codes, subscriptions));
        BorderPane root = new BorderPane(tabs);
        root.setBottom(said);
        said.setId("check-said");
        said.managedProperty().bind(said.textProperty().isNotEmpty());
        said.setText("");
        return windows.open(wording.say("check.title"), root, WIDTH, HEIGHT, Modality.NONE, subscriptions);
    }

    private Tab tab(String key, VBox content, Subscriptions subscriptions) {
        ColumnScroll scroll = new ColumnScroll(subscriptions);
        content.getStyleClass().addAll("column", "glossary");
        scroll.setContent(content);
        Tab tab = new Tab(wording.say(key), scroll);
        tab.setClosable(false);
        return tab;
    }

    private VBox form(Form form) {
        VBox page = new VBox();
        List<Integer> kept = book.check(form);
        if (kept.isEmpty()) {
            ask(page, form);
        } else {
            tell(page, form, kept);
        }
        return page;
    }

    private void ask(VBox page, Form form) {
        page.getChildren().setAll(WrappedLabel.of(IdeasCheckPages.Say.INTRO.in(wording.locale()), "quiet"));
        List<ToggleGroup> groups = new ArrayList<>();
        int number = 1;
        for (Step.Choose question : IdeasCheck.questions(form)) {
            ToggleGroup group = new ToggleGroup();
            VBox box = new VBox(
                    WrappedLabel.of(number + ". " + question.head().text().in(wording.locale()), "lesson-text"));
            box.getStyleClass().add("glossary-entry");
            for (int i = 0; i < question.choices().size(); i++) {
                RadioButton answer =
                        new RadioButton(question.choices().get(i).text().in(wording.locale()));
                answer.setId("check-" + form.name() + "-" + number + "-" + (i + 1));
                answer.setToggleGroup(group);
                answer.setUserData(i);
                answer.setWrapText(true);
                box.getChildren().add(answer);
            }
            groups.add(group);
            page.getChildren().add(box);
            number++;
        }
        Button done = new Button(wording.say("check.done"));
        done.setId("check-done-" + form.name());
        done.setOnAction(event -> {
            List<Integer> answers =
                    groups.stream().map(IdeasCheckWindow::chosen).toList();
            book.keep(form, answers);
            tell(page, form, answers);
        });
        page.getChildren().addAll(done, WrappedLabel.of(IdeasCheckPages.Say.ABOUT.in(wording.locale()), "quiet"));
    }

    private static int chosen(ToggleGroup group) {
        return group.getSelectedToggle() == null
                ? -1
                : (int) group.getSelectedToggle().getUserData();
    }

    private void tell(VBox page, Form form, List<Integer> answers) {
        List<Objective> right = IdeasCheck.shown(form, answers);
        page.getChildren()
                .setAll(WrappedLabel.of(
                        wording.say("check.result", right.size(), Objective.values().length), "section-title"));
        Stream.of(Objective.values())
                .map(it -> (right.contains(it) ? "✓ " : "– ") + it.sentence(wording.locale()))
                .forEach(line -> page.getChildren().add(Markdown.column(line)));
        Button save = new Button(wording.say("check.save"));
        save.setId("check-save-" + form.name());
        save.setOnAction(event -> save(IdeasCheckPages.learner(form, answers, wording.locale())));
        Button again = new Button(wording.say("check.again"));
        again.setId("check-again-" + form.name());
        again.setOnAction(event -> ask(page, form));
        page.getChildren()
                .addAll(WrappedLabel.of(IdeasCheckPages.Say.NO_LICENCE.in(wording.locale()), "quiet"), save, again);
    }

    private void save(Handout page) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle(page.title());
        chooser.setInitialFileName(FileNames.of(page.title(), wording) + ".html");
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter("HTML", "*.html"));
        Optional<File> file =
                Optional.ofNullable(chooser.showSaveDialog(window.stage().orElse(null)));
        file.ifPresent(it -> {
            byte[] bytes = HandoutHtml.write(List.of(page)).getBytes(StandardCharsets.UTF_8);
            said.setText(
                    ScenarioFiles.save(it.toPath(), bytes) instanceof Saved.Failed failed
                            ? failed.problem().text(wording.locale())
                            : wording.say("export.saved", it.getName()));
        });
    }
}
