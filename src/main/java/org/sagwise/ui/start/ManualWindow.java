package org.sagwise.ui.start;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Modality;
import javafx.stage.Stage;
import org.sagwise.assessment.Assessment;
import org.sagwise.picture.layout.BenchLayout;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.scene.BenchScene;
import org.sagwise.picture.scene.BenchView;
import org.sagwise.scenario.Scenario;
import org.sagwise.ui.kit.SideWindow;
import org.sagwise.ui.kit.SideWindows;
import org.sagwise.ui.kit.Snapshot;
import org.sagwise.ui.kit.Subscriptions;
import org.sagwise.ui.start.Manual.Piece;
import org.sagwise.ui.text.Markdown;
import org.sagwise.ui.text.Wording;

/**
 * The manual in a window of its own, in the window's language, without a network. Its pictures are
 * painted anew from the examples, so that they show what the bench shows.
 */
public final class ManualWindow {

    private static final double WIDTH = 860;
    private static final double HEIGHT = 640;

    /** Size of a picture in pixels of a screen of usual density, painted larger for others. */
    private static final int PICTURE_WIDTH = 560;

    private static final int PICTURE_HEIGHT = 230;
    private static final int DENSITY = 2;

    private final SideWindows windows;
    private final List<Example> examples;
    private final Function<Scenario, Assessment> assess;
    private final Wording wording;
    private final SideWindow window = new SideWindow();

    /**
     * @param assess computes everything about an example
     */
    public ManualWindow(
            SideWindows windows, List<Example> examples, Function<Scenario, Assessment> assess, Wording wording) {
        this.windows = windows;
        this.examples = examples;
        this.assess = assess;
        this.wording = wording;
    }

    /** Shows it, or brings it to the front. */
    public void show(Theme theme) {
        window.show(() -> open(theme));
    }

    private Stage open(Theme theme) {
        VBox text = new VBox();
        text.getStyleClass().add("manual");
        VBox chapters = new VBox();
        chapters.getStyleClass().add("manual-chapters");
        ScrollPane scroll = new ScrollPane(text);
        scroll.setId("manual");
        scroll.setFitToWidth(true);
        scroll.getStyleClass().add("plain-scroll");
        scroll.setAccessibleText(wording.say("manual.title"));
        for (Piece piece : Manual.in(wording.locale())) {
            Node node = node(piece, theme);
            text.getChildren().add(node);
            if (piece instanceof Piece.Chapter chapter) {
                chapters.getChildren().add(way(chapter.title(), node, scroll));
            }
        }
        BorderPane content = new BorderPane(scroll);
        content.setLeft(chapters);
        return windows.open(wording.say("manual.title"), content, WIDTH, HEIGHT, Modality.NONE, new Subscriptions());
    }

    private Node node(Piece piece, Theme theme) {
        if (piece instanceof Piece.Window window) {
            return window.open()
                    .map(file -> view(new Image(file), window.says()))
                    .orElseGet(() -> Markdown.column(window.markdown()));
        }
        if (piece instanceof Piece.Picture picture) {
            return picture(picture, theme);
        }
        return Markdown.column(piece.markdown());
    }

    private static Hyperlink way(String title, Node to, ScrollPane scroll) {
        Hyperlink way = new Hyperlink(title);
        way.setWrapText(true);
        way.setOnAction(event -> {
            double high = scroll.getContent().getBoundsInLocal().getHeight()
                    - scroll.getViewportBounds().getHeight();
            scroll.setVvalue(high <= 0 ? 0 : to.getBoundsInParent().getMinY() / high);
            way.setVisited(false);
        });
        return way;
    }

    private Node picture(Piece.Picture picture, Theme theme) {
        Image seen = ExampleBenches.named(picture.demo(), examples)
                .map(example -> example.scenario(wording.locale()))
                .map(scenario -> picture.held() ? scenario.pressed() : scenario.released())
                .map(assess)
                .map(bench -> Snapshot.of(
                        scene(bench, theme, wording.locale()),
                        BenchView.fit(
                                BenchLayout.of(bench.scenario()).bounds(),
                                PICTURE_WIDTH * DENSITY,
                                PICTURE_HEIGHT * DENSITY)))
                .orElse(null);
        return view(seen, picture.says());
    }

    private Node view(Image seen, String says) {
        ImageView view = new ImageView(seen);
        view.setFitWidth(PICTURE_WIDTH * windows.textScale());
        view.setPreserveRatio(true);
        view.setAccessibleText(says);
        return view;
    }

    private static BenchScene scene(Assessment bench, Theme theme, Locale locale) {
        return BenchScene.of(bench, BenchLayout.of(bench.scenario()), theme, locale)
                .with(Set.of(org.sagwise.picture.scene.Detail.FIGURES));
    }
}
