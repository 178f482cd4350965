package org.sagwise.ui.document;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;

/** Lets a file or a folder be dragged into the window. */
public final class DropTarget {

    private static final PseudoClass DROP = PseudoClass.getPseudoClass("drop");

    private DropTarget() {}

    /**
     * Takes what is dropped on a node.
     *
     * @param taker opens it
     */
    public static void on(Node node, Consumer<Path> taker) {
        node.setOnDragOver(event -> accept(event));
        node.setOnDragEntered(
                event -> node.pseudoClassStateChanged(DROP, file(event).isPresent()));
        node.setOnDragExited(event -> node.pseudoClassStateChanged(DROP, false));
        node.setOnDragDropped(event -> drop(event, taker));
    }

    private static void accept(DragEvent event) {
        if (file(event).isPresent()) {
            event.acceptTransferModes(TransferMode.COPY);
            event.consume();
        }
    }

    private static void drop(DragEvent event, Consumer<Path> taker) {
        Optional<File> file = file(event);
        event.setDropCompleted(file.isPresent());
        event.consume();
        // The other program waits for the end of the drop, and a question may come up meanwhile.
        file.ifPresent(dropped -> Platform.runLater(() -> taker.accept(dropped.toPath())));
    }

    private static Optional<File> file(DragEvent event) {
        List<File> files = event.getDragboard().getFiles();
        return files != null && files.size() == 1 ? Optional.of(files.get(0)) : Optional.empty();
    }
}
