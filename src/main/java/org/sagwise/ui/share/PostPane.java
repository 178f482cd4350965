package org.sagwise.ui.share;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextArea;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.sagwise.assessment.Moment;
import org.sagwise.file.ShareText;
import org.sagwise.report.explain.ExplainedPost;
import org.sagwise.report.post.PostFormat;
import org.sagwise.text.Signs;
import org.sagwise.ui.kit.ChoiceDialog;
import org.sagwise.ui.kit.CopyBoard;
import org.sagwise.ui.kit.Exports;
import org.sagwise.ui.kit.LatestTask;
import org.sagwise.ui.kit.Tip;
import org.sagwise.ui.kit.WorkLine;
import org.sagwise.ui.text.Wording;

/** The post that explains the bench: in which format, how it reads, and off with it. */
final class PostPane extends BorderPane {

    private static final Map<PostFormat, String> ENDINGS = Map.of(
            PostFormat.MARKDOWN, "md",
            PostFormat.BBCODE, "bbcode",
            PostFormat.TEXT, "txt",
            PostFormat.HTML, "html");

    private final Moments moments;
    private final Optional<String> page;
    private final Wording wording;
    private final Exports exports;
    private final LatestTask latest;
    private final ChoiceDialog<PostFormat> format;
    private final CheckBox ascii;
    private final TextArea preview = new TextArea();
    private final Label state = new Label();
    private final Button copy;
    private final Button save;
    private String post = "";

    /**
     * @param page name of the live page's file, if one was written of this bench
     */
    PostPane(Moment clock, Optional<String> page, Wording wording, Exports exports, LatestTask latest, QrPane code) {
        this.moments = new Moments("post", clock, wording);
        this.page = page;
        this.wording = wording;
        this.exports = exports;
        this.latest = latest;
        setId("post");
        format = new ChoiceDialog<>(
                "post",
                wording.say("post.format"),
                List.of(PostFormat.values()),
                PostFormat::word,
                each -> wording.say("post.format." + each.word()));
        ascii = new CheckBox(wording.say("post.ascii"));
        ascii.setId("post-ascii");
        Tip.put(ascii, wording.say("post.ascii.tip"));
        HBox head = new HBox(format, moments, ascii);
        head.setAlignment(Pos.BOTTOM_LEFT);
        head.getStyleClass().add("window-row");
        preview.setId("post-preview");
        preview.getStyleClass().add("post-preview");
        preview.setEditable(false);
        preview.setWrapText(true);
        preview.setAccessibleText(wording.say("post.preview"));
        copy = new Button(wording.say("post.copy"));
        copy.setId("post-copy");
        copy.setDefaultButton(true);
        copy.setOnAction(event -> copy());
        save = new Button(wording.say("export.save"));
        save.setId("post-save");
        save.setOnAction(event -> save());
        state.setId("post-state");
        setTop(new VBox(head));
        setCenter(preview);
        setRight(code);
        setBottom(new WindowFoot(state, new WorkLine("post", latest, state, wording), save, copy));
        format.chosenProperty().subscribe(chosen -> write());
        ascii.selectedProperty().subscribe((before, now) -> write());
        moments.chosenProperty().subscribe((before, now) -> write());
    }

    private void write() {
        PostFormat wanted = format.get();
        Signs signs = ascii.isSelected() ? Signs.ASCII : Signs.PRINT;
        copy.setDisable(true);
        save.setDisable(true);
        state.setText(wording.say("post.writing"));
        Moment moment = moments.get();
        latest.ask(() -> written(moment, wanted, signs), this::show);
    }

    private Written written(Moment moment, PostFormat wanted, Signs signs) {
        String whole = text(moment, wanted, signs);
        return new Written(wanted, whole, wanted.hasPictures() ? text(moment, PostFormat.TEXT, signs) : whole);
    }

    private String text(Moment moment, PostFormat wanted, Signs signs) {
        ExplainedPost.Wish wish = new ExplainedPost.Wish(ExplainedPost.Size.LONG, Optional.empty(), page);
        return ExplainedPost.write(moment, wanted, ShareText::of, wish, wording.locale(), signs);
    }

    private void show(Written written) {
        post = written.whole();
        preview.setText(written.preview());
        preview.setScrollTop(0);
        copy.setDisable(false);
        save.setDisable(false);
        state.setText(wording.say(
                written.format().hasPictures() ? "post.state.pictures" : "post.state",
                post.length(),
                post.lines().count()));
    }

    private void copy() {
        CopyBoard.put(post);
        state.setText(wording.say("post.copied"));
    }

    private void save() {
        exports.save(
                        getScene().getWindow(),
                        moments.get().assessment().scenario().title(),
                        ENDINGS.get(format.get()),
                        post.getBytes(StandardCharsets.UTF_8))
                .ifPresent(state::setText);
    }

    /**
     * A post.
     *
     * @param preview how it reads; the source of a file with pictures reads like nothing
     */
    private record Written(PostFormat format, String whole, String preview) {}
}
