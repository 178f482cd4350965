package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;

/** The drawer of the evening class of the Lantern Yard workshop: invented, to look at and to try out. */
public final class DemoDrawer {

    /** What it is called where a file could be named. */
    public static final String NAME = "lantern-yard";

    private DemoDrawer() {}

    /** What lies in it. */
    public static Drawer of(Catalogue catalogue) {
        try (InputStream stream = DemoDrawer.class.getResourceAsStream("/org/sagwise/drawer/lantern-yard.json")) {
            if (DrawerReader.read(stream.readAllBytes(), catalogue) instanceof DrawerReader.Read.Ok ok) {
                return ok.drawer();
            }
            throw new IllegalStateException("the demo drawer was broken when the program was built");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
