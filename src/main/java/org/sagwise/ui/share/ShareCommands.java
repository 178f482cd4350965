package org.sagwise.ui.share;

import org.sagwise.ui.command.Command;

/** What the window can be told to do about handing benches on. */
public record ShareCommands(Command paste, Command share) {

    public static ShareCommands of(ShareDesk desk) {
        return new ShareCommands(
                Command.of("paste", desk::paste).by("Shortcut+V"),
                Command.of("share", desk::copyShareText).by("Shortcut+Shift+C"));
    }
}
