package org.sagwise.ui.share;

import javafx.scene.control.Label;
import javafx.scene.layout.Region;

import org.sagwise.file.ShareText;
import org.sagwise.ui.dialog.Dialogs;
import org.sagwise.ui.file.Documents;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.text.Wording;

import java.util.Optional;
import java.util.function.Consumer;

/** Where a bench is handed on, and one that was handed on is taken. */
public final class ShareDesk {

    private final BenchModel bench;
    private final Documents documents;
    private final Dialogs dialogs;
    private final Consumer<String> say;

    /**
     * @param say says in passing what was done
     */
    public ShareDesk(BenchModel bench, Documents documents, Dialogs dialogs, Consumer<String> say) {
        this.bench = bench;
        this.documents = documents;
        this.dialogs = dialogs;
        this.say = say;
    }

    /** Opens the share text or scenario that was copied last. */
    public void paste() {
        Optional<String> text = CopyBoard.text();
        text.ifPresent(documents::openText);
        if (text.isEmpty()) {
            tell("share.nothing-copied.title", "share.nothing-copied", ShareText.BEGINNING);
        }
    }

    /** Copies the bench as share text. */
    public void copyShareText() {
        Optional<String> text = ShareText.of(bench.scenario());
        text.ifPresent(CopyBoard::put);
        if (text.isPresent()) {
            say.accept(wording().say("share.copied", text.get().length()));
        } else {
            tell("share.too-large.title", "share.too-large", ShareText.MOST_CHARACTERS / 1024);
        }
    }

    private void tell(String titleKey, String key, Object... words) {
        Label text = new Label(wording().say(key, words));
        text.setWrapText(true);
        text.setMinHeight(Region.USE_PREF_SIZE);
        text.getStyleClass().add("dialog-words");
        dialogs.tell("share-told", wording().say(titleKey), text);
    }

    private Wording wording() {
        return dialogs.wording();
    }
}
