package org.sagwise.ui.share;

import java.util.List;
import org.sagwise.ui.kit.Command;

/** What the window can be told to do about handing benches on. */
public final class ShareCommands {

    private ShareCommands() {}

    public static List<Command> of(ShareDesk desk) {
        return List.of(
                Command.of("paste", desk::paste).by("Shortcut+V"),
                Command.of("share", desk::copyShareText).by("Shortcut+Shift+C"),
                Command.of("post", desk::copyPost).by("Shortcut+Shift+E"),
                Command.of("picture", desk::exportPicture).by("Shortcut+E"),
                Command.of("page", desk::exportPage),
                Command.of("new-words", desk::fromWords).by("Shortcut+Alt+N"),
                Command.of("measured", desk::fromMeter).by("Shortcut+M"),
                Command.of("compare", desk::compare).by("Shortcut+K"));
    }
}
