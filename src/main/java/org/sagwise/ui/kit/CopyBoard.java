package org.sagwise.ui.kit;

import java.util.Optional;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;

/** Text on the clipboard of the system. */
public final class CopyBoard {

    private CopyBoard() {}

    /** The text that was copied last; empty if there is none. */
    public static Optional<String> text() {
        return Optional.ofNullable(Clipboard.getSystemClipboard().getString()).filter(text -> !text.isBlank());
    }

    public static void put(String text) {
        ClipboardContent content = new ClipboardContent();
        content.putString(text);
        Clipboard.getSystemClipboard().setContent(content);
    }
}
