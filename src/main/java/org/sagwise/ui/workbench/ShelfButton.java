package org.sagwise.ui.workbench;

import java.util.Arrays;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.sagwise.interaction.CopyPlace;
import org.sagwise.picture.geometry.Point;
import org.sagwise.scenario.edit.ShelfItem;
import org.sagwise.ui.kit.ContentButton;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.text.Wording;

/**
 * One thing on the shelf. Drag it to the bench; or click it, or press Enter on it, and it is in the
 * hand until it is laid down.
 */
final class ShelfButton extends ContentButton {

    /** Between picture and words, in pixels. */
    private static final double GAP = 9;

    private final ShelfItem good;
    private final Label kind = new Label();
    private final Workbench work;
    private final Wording wording;

    ShelfButton(ShelfItem good, ShelfPictures pictures, Workbench work, Wording wording) {
        this.good = good;
        this.work = work;
        this.wording = wording;
        String title = title(good, wording);
        String about = about(good, wording);
        setId("shelf-" + good.name());
        getStyleClass().add("shelf-item");
        setAccessibleText(wording.say("shelf.item.spoken", title, about));
        Tip.put(this, wording.say("shelf.item.tip", title, about));
        ImageView picture = new ImageView();
        picture.setFitWidth(ShelfPictures.WIDTH);
        picture.setFitHeight(ShelfPictures.HEIGHT);
        picture.imageProperty().bind(pictures.of(good));
        Label words = new Label(wholeQuantities(title));
        words.setWrapText(true);
        words.setMinWidth(0);
        words.setMaxWidth(Double.MAX_VALUE);
        words.getStyleClass().add("shelf-title");
        setThere(false);
        kind.getStyleClass().add("quiet");
        nameKind(false);
        VBox lines = new VBox(kind, words);
        lines.setMinWidth(0);
        HBox.setHgrow(lines, Priority.ALWAYS);
        lines.setAlignment(Pos.CENTER_LEFT);
        HBox content = new HBox(GAP, picture, lines);
        content.setAlignment(Pos.CENTER_LEFT);
        setContent(content);
        setAlignment(Pos.CENTER_LEFT);
        setMaxWidth(Double.MAX_VALUE);
        setMinWidth(0);
        content.prefWidthProperty().bind(widthProperty().subtract(16));
        setOnAction(event -> take());
        DragOut.of(this, work);
    }

    /** A number and its unit stay on one line. */
    private static String wholeQuantities(String words) {
        return words.replaceAll("(?<=\\d) (?=[\\p{L}Ω])", "\u00a0");
    }

    /** Says what kind of part it is, where no heading does. */
    void nameKind(boolean said) {
        kind.setVisible(said);
        kind.setManaged(said);
    }

    /** Whether the bench has a part of its kind, which is told where the kind is. */
    void setThere(boolean there) {
        String word = wording.say("kind." + good.part().kind().word());
        kind.setText(there ? wording.say("shelf.there", word) : word);
    }

    /** Names it among all goods. */
    String name() {
        return good.name();
    }

    static String title(ShelfItem good, Wording wording) {
        return good.card()
                .map(card -> card.title().in(wording.locale()))
                .orElseGet(() -> wording.say("shelf.plain." + good.part().kind().word()));
    }

    static String about(ShelfItem good, Wording wording) {
        return good.card()
                .map(card -> card.about().in(wording.locale()))
                .orElseGet(() -> wording.say("shelf.plain." + good.part().kind().word() + ".about"));
    }

    /** Whether every word of a search is in its name or its family's. */
    boolean isCalled(String search, Wording wording) {
        String kind = good.part().kind().word();
        return hasAll(
                search,
                String.join(" ", title(good, wording), wording.say("kind." + kind), wording.say("family." + kind)),
                wording.locale());
    }

    /** Whether every word of a search is in its name, its family's, or in what is said of it. */
    boolean answers(String search, Wording wording) {
        return hasAll(
                search,
                String.join(
                        " ",
                        title(good, wording),
                        about(good, wording),
                        wording.say("kind." + good.part().kind().word())),
                wording.locale());
    }

    private static boolean hasAll(String search, String words, Locale locale) {
        String all = words.toLowerCase(locale);
        return Arrays.stream(search.toLowerCase(locale).split("\\s+")).allMatch(all::contains);
    }

    private void take() {
        Point free = CopyPlace.near(
                work.ground().lying(), good.part().kind(), work.ground().middle());
        work.ground().takeFocus();
        work.hands().take(good.part(), free.x(), free.y());
    }
}
