package org.sagwise.ui;

import javafx.application.Application;
import javafx.scene.Scene;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;

/** The window of the program. */
public final class SagwiseApp extends Application {

    @Override
    public void start(Stage stage) {
        stage.setTitle("Sagwise");
        stage.setScene(new Scene(new BorderPane(), 1280, 800));
        stage.show();
    }
}
