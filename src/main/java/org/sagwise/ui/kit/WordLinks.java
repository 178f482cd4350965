package org.sagwise.ui.kit;

import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import org.sagwise.text.Glossary;
import org.sagwise.ui.text.Wording;

/** Under a text: the words in it that the glossary explains, each a way there. */
public final class WordLinks extends FlowPane {

    /**
     * @param entries the words; with none nothing is shown
     */
    public WordLinks(List<Glossary.Entry> entries, Wording wording) {
        getStyleClass().add("word-links");
        setVisible(!entries.isEmpty());
        setManaged(!entries.isEmpty());
        Label head = new Label(wording.say("glossary.words"));
        head.getStyleClass().add("quiet");
        getChildren().add(head);
        entries.forEach(entry -> getChildren().add(link(entry)));
    }

    private Button link(Glossary.Entry entry) {
        Button link = new Button(entry.term());
        link.setId("word-" + entry.id());
        link.getStyleClass().add("link-button");
        link.setMinWidth(USE_PREF_SIZE);
        Tip.put(link, entry.text());
        link.setOnAction(event -> fireEvent(new LookUp(entry.id())));
        return link;
    }
}
