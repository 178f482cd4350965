package org.sagwise.ui.file;

import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

import java.io.File;
import java.util.List;
import java.util.Optional;

/** Lets a scenario file be dragged into the window. */
public final class DropTarget {

    private static final PseudoClass DROP = PseudoClass.getPseudoClass("drop");

    private DropTarget() {}

    /** Opens what is dropped on a node. */
    public static void on(Node node, Documents documents) {
        node.setOnDragOver(event -> accept(event));
        node.setOnDragEntered(event -> node.pseudoClassStateChanged(DROP, file(event).isPresent()));
        node.setOnDragExited(event -> node.pseudoClassStateChanged(DROP, false));
        node.setOnDragDropped(event -> drop(event, documents));
    }

    private static void accept(DragEvent event) {
        if (file(event).isPresent()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
        }
    }

    private static void drop(DragEvent event, Documents documents) {
        Optional<File> file = file(event);
        event.setDropCompleted(file.isPresent());
        event.consume();
        // The other program waits for the end of the drop, and a question may come up meanwhile.
        file.ifPresent(dropped -> Platform.runLater(() -> documents.open(dropped.toPath())));
    }

    private static Optional<File> file(DragEvent event) {
        List<File> files = event.getDragboard().getFiles();
        return files != null && files.size() == 1 ? Optional.of(files.get(0)) : Optional.empty();
    }
}
