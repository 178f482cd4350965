package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Locale;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.Marriage;
import org.sagwise.plan.drawer.OwnCell;
import org.sagwise.plan.drawer.Retirement;
import org.sagwise.text.Texts;

/** The drawer of the evening class of the Lantern Yard workshop: invented, to look at and to try out. */
public final class DemoDrawer {

    /** What it is called where a file could be named. */
    public static final String NAME = "lantern-yard";

    private DemoDrawer() {}

    /** What lies in it, its words in a language. */
    public static Drawer of(Catalogue catalogue, Locale locale) {
        try (InputStream stream = DemoDrawer.class.getResourceAsStream("/org/sagwise/drawer/lantern-yard.json")) {
            if (DrawerReader.read(stream.readAllBytes(), catalogue) instanceof DrawerReader.Read.Ok ok) {
                Texts texts = Texts.in("drawer", locale);
                return new Drawer(
                        ok.drawer().cells().stream()
                                .map(cell -> said(cell, texts))
                                .toList(),
                        ok.drawer().foreign());
            }
            throw new IllegalStateException("the demo drawer was broken when the program was built");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The file has keys where a person's own drawer has words. */
    private static OwnCell said(OwnCell cell, Texts texts) {
        return new OwnCell(
                cell.mark(),
                said(cell.name(), texts),
                cell.model(),
                cell.figures(),
                cell.bought(),
                cell.measurements(),
                cell.marriage().map(it -> new Marriage(said(it.set(), texts), it.since())),
                cell.retirement().map(it -> new Retirement(it.on(), said(it.why(), texts))),
                said(cell.note(), texts),
                cell.foreign());
    }

    private static String said(String key, Texts texts) {
        return key.isEmpty() ? key : texts.say(key);
    }
}
