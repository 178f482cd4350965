package org.sagwise.ui.table;

import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;

import org.sagwise.ui.fire.SpaceBar;
import org.sagwise.ui.model.BenchModel;
import org.sagwise.ui.model.Subscriptions;
import org.sagwise.ui.text.Wording;
import org.sagwise.ui.theme.LooksModel;
import org.sagwise.ui.theme.StyleSheets;

/** A window beside the bench with the table of parts and readings; the button works there too. */
public final class ReadingsWindow {

    private final Stage owner;
    private final BenchModel bench;
    private final LooksModel looks;
    private final Wording wording;
    private Stage stage;

    public ReadingsWindow(Stage owner, BenchModel bench, LooksModel looks, Wording wording) {
        this.owner = owner;
        this.bench = bench;
        this.looks = looks;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show() {
        if (stage == null) {
            stage = open();
        }
        stage.show();
        stage.requestFocus();
    }

    public void close() {
        if (stage != null) {
            stage.close();
        }
    }

    private Stage open() {
        Subscriptions subscriptions = new Subscriptions();
        Stage window = new Stage();
        window.initOwner(owner);
        window.setTitle(wording.say("table.title"));
        BorderPane root = new BorderPane(new ReadingsTable(bench, wording, subscriptions));
        root.getStyleClass().add("table-window");
        Scene scene = new Scene(root, 760, 420);
        window.setScene(scene);
        StyleSheets.follow(looks, scene.getStylesheets(), subscriptions);
        SpaceBar.holds(bench.thumb(), window, subscriptions);
        scene.addEventHandler(
                KeyEvent.KEY_PRESSED,
                event -> {
                    if (event.getCode() == KeyCode.ESCAPE) {
                        window.close();
                    }
                });
        window.setOnHidden(
                event -> {
                    subscriptions.close();
                    stage = null;
                });
        return window;
    }
}
