package org.sagwise.ui.start;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Label;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.text.Wording;

/** Says what program this is, in which version, under which licence, and whose work is in it. */
public final class AboutDialog {

    /**
     * Somebody else's work that comes with the program.
     *
     * @param artifact how the names of its libraries begin; empty for what is no library
     */
    record Work(String name, String licence, String artifact) {}

    /** Everything that is shipped; a test compares it with what the build bundles. */
    static final List<Work> WORKS = List.of(
            new Work("OpenJFX", "GPL-2.0 with Classpath Exception", "javafx"),
            new Work("ControlsFX", "BSD-3-Clause", "controlsfx"),
            new Work("Apache Commons Math", "Apache-2.0", "commons-math3"),
            new Work("Apache Commons Logging", "Apache-2.0", "commons-logging"),
            new Work("Apache PDFBox", "Apache-2.0", "pdfbox"),
            new Work("Apache FontBox", "Apache-2.0", "fontbox"),
            new Work("PDFBox Graphics2D", "Apache-2.0", "graphics2d"),
            new Work("Jackson", "Apache-2.0", "jackson"),
            new Work("SnakeYAML", "Apache-2.0", "snakeyaml"),
            new Work("picocli", "Apache-2.0", "picocli"),
            new Work("JGraphT", "EPL-2.0", "jgrapht"),
            new Work("JHeaps", "Apache-2.0", "jheaps"),
            new Work("ZXing", "Apache-2.0", "core"),
            new Work("commonmark-java", "BSD-2-Clause", "commonmark"),
            new Work("TeaVM", "Apache-2.0", "teavm"),
            new Work("Source Sans 3", "OFL-1.1", ""));

    private AboutDialog() {}

    public static void show(Dialogs dialogs) {
        Wording wording = dialogs.wording();
        String version = Optional.ofNullable(AboutDialog.class.getPackage().getImplementationVersion())
                .orElseGet(() -> wording.say("about.version.unbuilt"));
        Label job = new Label(wording.say("about.job"));
        job.setWrapText(true);
        VBox content = new VBox(
                job,
                new Label(wording.say("about.version", version)),
                new Label(wording.say("about.licence")),
                new Label(wording.say("about.works")),
                works());
        content.getStyleClass().add("dialog-words");
        dialogs.tell("about-dialog", wording.say("about.heading"), content);
    }

    /** By licence: a work to a line is more than a small screen is high. */
    private static GridPane works() {
        Map<String, String> byLicence = WORKS.stream()
                .collect(Collectors.toMap(
                        Work::licence, Work::name, (one, more) -> one + ", " + more, LinkedHashMap::new));
        GridPane grid = new GridPane();
        grid.getStyleClass().add("keys");
        byLicence.forEach((licence, names) -> {
            Label quiet = new Label(licence);
            quiet.getStyleClass().add("quiet");
            Label works = WrappedLabel.of(names, "about-works");
            grid.addRow(grid.getRowCount(), works, quiet);
        });
        return grid;
    }
}
