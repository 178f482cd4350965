package org.sagwise.ui.share;

import org.sagwise.ui.kit.Command;

/** What the window can be told to do about handing benches on. */
public record ShareCommands(
        Command paste, Command share, Command post, Command picture, Command measured, Command compare) {

    public static ShareCommands of(ShareDesk desk) {
        return new ShareCommands(
                Command.of("paste", desk::paste).by("Shortcut+V"),
                Command.of("share", desk::copyShareText).by("Shortcut+Shift+C"),
                Command.of("post", desk::copyPost).by("Shortcut+Shift+E"),
                Command.of("picture", desk::exportPicture).by("Shortcut+E"),
                Command.of("measured", desk::fromMeter).by("Shortcut+M"),
                Command.of("compare", desk::compare).by("Shortcut+K"));
    }
}
