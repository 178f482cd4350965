package org.sagwise.ui.start;

import java.util.List;
import java.util.Locale;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.sagwise.hazard.Notices;
import org.sagwise.text.Texts;
import org.sagwise.ui.kit.Dialogs;
import org.sagwise.ui.kit.SafetyMessage;
import org.sagwise.ui.kit.WrappedLabel;
import org.sagwise.ui.settings.PreferencesModel;

/**
 * What everyone should know before they build anything: once at the first start, then on request.
 */
public final class NoticeDialogs {

    /** Raised when the notice says something new that everyone should read again. */
    private static final int EDITION = 1;

    private NoticeDialogs() {}

    /** Shows the notice to a person who has not read this edition of it. */
    public static void showOnce(PreferencesModel preferences, Dialogs dialogs) {
        if (preferences.get().noticeRead() >= EDITION) {
            return;
        }
        Locale locale = dialogs.wording().locale();
        ButtonType read =
                new ButtonType(Texts.in("notices", locale).say("first-start.agree"), ButtonBar.ButtonData.OK_DONE);
        VBox content =
                new VBox(new SafetyMessage(Notices.firstStart(locale), locale), WrappedLabel.of(Notices.model(locale)));
        content.getStyleClass().add("dialog-words");
        dialogs.ask("first-notice", dialogs.wording().say("notice.heading"), content, List.of(read))
                .filter(read::equals)
                .ifPresent(agreed -> preferences.change(now -> now.withNoticeRead(EDITION)));
    }

    /** Shows everything that is to be known. */
    public static void show(Dialogs dialogs) {
        Locale locale = dialogs.wording().locale();
        VBox messages = new VBox(WrappedLabel.of(Notices.model(locale)));
        messages.getStyleClass().add("safety-list");
        messages.getChildren().add(new SafetyMessage(Notices.firstStart(locale), locale));
        for (Notices.Message message : Notices.messages(locale)) {
            messages.getChildren().add(new SafetyMessage(message, locale));
        }
        ScrollPane scroll = new ScrollPane(messages);
        scroll.setFitToWidth(true);
        scroll.getStyleClass().addAll("plain-scroll", "safety-scroll");
        dialogs.tell("notice-dialog", dialogs.wording().say("notice.heading"), scroll);
    }
}
