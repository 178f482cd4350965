package org.sagwise.ui.document;

import java.nio.file.Path;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/** Tells that somebody else works on the file that lies on the bench, or has changed it. */
public final class RivalStrip extends HBox {

    private final Documents documents;
    private final Wording wording;
    private final Label words = new Label();
    private final Button reread = new Button();

    public RivalStrip(Documents documents, Wording wording, Subscriptions subscriptions) {
        this.documents = documents;
        this.wording = wording;
        setId("rival");
        getStyleClass().add("felt-strip");
        setAlignment(Pos.CENTER_LEFT);
        setAccessibleRole(AccessibleRole.TEXT);
        words.setId("rival-words");
        words.setWrapText(true);
        words.setMinWidth(0);
        words.setMinHeight(USE_PREF_SIZE);
        words.setMaxWidth(Double.MAX_VALUE);
        setHgrow(words, Priority.ALWAYS);
        reread.setText(wording.say("rival.reread"));
        reread.setId("rival-reread");
        reread.setMinWidth(USE_PREF_SIZE);
        Tip.put(reread, wording.say("rival.reread.tip"));
        reread.setOnAction(event -> documents.reread());
        Button close = new Button(wording.say("rival.close"));
        close.setId("rival-close");
        close.setMinWidth(USE_PREF_SIZE);
        close.setOnAction(event -> show(false));
        getChildren().addAll(words, reread, close);
        subscriptions.watch(documents.rivalProperty(), this::tell);
    }

    private void tell(Documents.Rival rival) {
        Optional<Path> file = documents.fileProperty().get();
        boolean told = rival != Documents.Rival.NONE && file.isPresent();
        if (told) {
            boolean written = rival == Documents.Rival.WRITER;
            words.setText(wording.say(
                    written ? "rival.writer" : "rival.window", file.get().getFileName()));
            reread.setVisible(written);
            reread.setManaged(written);
            setAccessibleText(words.getText());
        }
        show(told);
    }

    private void show(boolean shown) {
        setVisible(shown);
        setManaged(shown);
    }
}
