package org.sagwise.ui.shell;

import java.util.List;
import javafx.application.Platform;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.document.BenchModel;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.text.Wording;

/** Changes the title of a bench and what is written about it. */
final class TitleDialog {

    private TitleDialog() {}

    static void show(BenchModel bench, Dialogs dialogs) {
        Wording wording = dialogs.wording();
        TextField title = new TextField(bench.scenario().title());
        title.setId("title-field");
        TextArea about = new TextArea(bench.scenario().about());
        about.setId("about-field");
        about.setWrapText(true);
        Label titleLabel = new Label(wording.say("title.title"));
        titleLabel.setLabelFor(title);
        Label aboutLabel = new Label(wording.say("title.about"));
        aboutLabel.setLabelFor(about);
        Label hint = new Label(wording.say("title.about.hint"));
        hint.getStyleClass().add("quiet");
        hint.setWrapText(true);
        VBox content = new VBox(titleLabel, title, aboutLabel, about, hint);
        content.getStyleClass().add("dialog-words");
        Platform.runLater(title::requestFocus);
        ButtonType change = dialogs.agree("title.do");
        dialogs.ask(
                        "title-dialog",
                        wording.say("title.heading"),
                        content,
                        List.of(change, dialogs.leave("dialog.cancel")))
                .filter(change::equals)
                .ifPresent(agreed ->
                        bench.edit(wording.say("edit.title"), now -> changed(now, title.getText(), about.getText())));
    }

    private static Scenario changed(Scenario now, String title, String about) {
        return now.withTitle(title.strip()).withAbout(about.strip());
    }
}
