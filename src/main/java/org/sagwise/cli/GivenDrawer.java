package org.sagwise.cli;

import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.DemoDrawer;
import org.sagwise.file.DrawerFile;
import org.sagwise.file.UserFolders;

/**
 * The drawer that a call is about.
 *
 * @param name of a file, or that of the class; empty for the one in the folder of the user's data
 */
record GivenDrawer(Optional<String> name, Amounts amounts) {

    /** Whether it is that of the class, which is looked at and not changed. */
    boolean isDemo() {
        return name.filter(DemoDrawer.NAME::equals).isPresent() && !Files.exists(Path.of(DemoDrawer.NAME));
    }

    Path path() {
        try {
            return name.map(Path::of).orElseGet(() -> UserFolders.here().data().resolve(DrawerFile.NAME));
        } catch (InvalidPathException odd) {
            throw amounts.wrong(amounts.call().texts().say("wrong.name"));
        }
    }

    DrawerFile file() {
        return new DrawerFile(path(), CatalogueLoader.builtIn());
    }
}
