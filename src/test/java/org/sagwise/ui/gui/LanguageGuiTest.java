package org.sagwise.ui.gui;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeoutException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.application.Application;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextInputControl;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.language.MadeUpLanguage;
import org.sagwise.ui.SagwiseApp;
import org.sagwise.ui.kit.Tip;

/** The window takes a third language by its texts alone, and shows no words of its own. */
class LanguageGuiTest extends GuiTest {

    private static final Pattern WORD = Pattern.compile("\\p{L}{3,}");

    /** What stays in any language: the program's name, its keys, languages by their own names. */
    private static final Set<String> KEPT = Set.of(
            "Sagwise",
            "Ctrl",
            "Shift",
            "Alt",
            "Enter",
            "Space",
            "Esc",
            "Delete",
            "English",
            "Deutsch",
            MadeUpLanguage.CODE,
            "min",
            "mAh");

    @TempDir
    private Path language;

    @Test
    void window_inAMadeUpLanguage_hasNoWordsOutsideOfBrackets() throws Exception {
        openIn(MadeUpLanguage.CODE, MadeUpLanguage.program(language));
        openExamples();
        openReadings();
        openClock();
        assertEquals(Set.of(), words());

        robot().interact(() -> ((Button) node("example-side-by-side-one-reversed")).fire());
        settle();
        assertEquals(Set.of(), words());
    }

    private void openIn(String code, ClassLoader program) throws IOException, TimeoutException, ClassNotFoundException {
        openIn(code, program.loadClass(SagwiseApp.class.getName()).asSubclass(Application.class));
    }

    private Set<String> words() throws IOException {
        Set<String> shown = new TreeSet<>();
        StringBuilder flowing = new StringBuilder();
        robot().listWindows().forEach(window -> collect(window.getScene().getRoot(), shown, flowing));
        shown.add(flowing.toString());
        assertTrue(shown.stream().anyMatch(text -> text.contains("[[")), shown.toString());
        Set<String> ids = MadeUpLanguage.ids();
        Set<String> found = new TreeSet<>();
        for (String text : shown) {
            Matcher word = WORD.matcher(MadeUpLanguage.outside(text));
            while (word.find()) {
                if (!KEPT.contains(word.group()) && !ids.contains(word.group())) {
                    found.add(word.group() + " in: " + text);
                }
            }
        }
        return found;
    }

    /**
     * @param flowing takes runs of text that follow each other, as bold words do in a sentence
     */
    private static void collect(Node node, Set<String> shown, StringBuilder flowing) {
        add(node.getAccessibleText(), shown);
        add(node.getAccessibleHelp(), shown);
        if (node instanceof Labeled labeled) {
            add(labeled.getText(), shown);
        } else if (node instanceof Text text && !(node.getParent() instanceof Labeled)) {
            flowing.append(text.getText()).append('\n');
        } else if (node instanceof TextInputControl input) {
            add(input.getPromptText(), shown);
        } else if (node instanceof MenuBar bar) {
            bar.getMenus().forEach(menu -> collect(menu, shown));
        }
        Tip.of(node).ifPresent(words -> add(words, shown));
        if (node instanceof Parent parent) {
            List.copyOf(parent.getChildrenUnmodifiable()).forEach(child -> collect(child, shown, flowing));
        }
    }

    private static void collect(MenuItem item, Set<String> shown) {
        add(item.getText(), shown);
        if (item instanceof Menu menu) {
            menu.getItems().forEach(inner -> collect(inner, shown));
        }
    }

    private static void add(String text, Set<String> shown) {
        if (text != null) {
            shown.add(text);
        }
    }
}
