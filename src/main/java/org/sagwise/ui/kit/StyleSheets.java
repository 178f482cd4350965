package org.sagwise.ui.kit;

import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.collections.ObservableList;
import org.sagwise.picture.look.Theme;
import org.sagwise.picture.pen.Typeface;
import org.sagwise.ui.settings.AppliedLooks;
import org.sagwise.ui.settings.LooksModel;

/**
 * The style sheets of the window and its dialogs: shapes and sizes in one file, colours that only
 * the window has in a file for each theme, colours that it shares with pictures made from those.
 */
public final class StyleSheets {

    private static final String FOLDER = "/org/sagwise/ui/";

    /** Usual size of text in pixels. */
    private static final double USUAL_TEXT = 14;

    private StyleSheets() {}

    /** Keeps the style sheets of a scene or a dialog as the looks have them. */
    public static void follow(LooksModel looks, ObservableList<String> sheets, Subscriptions subscriptions) {
        follow(looks.property(), sheets, subscriptions);
    }

    /** Keeps the style sheets of a scene as these looks have them. */
    public static void follow(
            ReadOnlyObjectProperty<AppliedLooks> looks, ObservableList<String> sheets, Subscriptions subscriptions) {
        subscriptions.watch(looks, now -> sheets.setAll(of(now)));
    }

    static List<String> of(AppliedLooks looks) {
        return List.of(file("window"), file(word(looks.theme())), root(looks));
    }

    /** Name of a theme's own style sheet. */
    static String word(Theme theme) {
        return theme.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static String file(String name) {
        URL url = StyleSheets.class.getResource(FOLDER + name + ".css");
        return Objects.requireNonNull(url, name).toExternalForm();
    }

    /**
     * A style sheet and no inline style, so that popups, which have a root of their own, follow.
     */
    private static String root(AppliedLooks looks) {
        String rule = String.format(
                Locale.ROOT,
                ".root { -fx-font-size: %.2fpx; -fx-font-family: \"%s\"; %s }",
                USUAL_TEXT * looks.textScale(),
                Typeface.FAMILY,
                ToneSheet.declarations(looks.theme()));
        return "data:text/css;base64," + Base64.getEncoder().encodeToString(rule.getBytes(StandardCharsets.UTF_8));
    }
}
