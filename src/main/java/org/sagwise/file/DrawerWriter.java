package org.sagwise.file;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.sagwise.part.key.Keys;
import org.sagwise.plan.drawer.CellMeasurement;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.plan.drawer.DrawerKeys;
import org.sagwise.plan.drawer.OwnCell;

/** Writes the file of a drawer, format 1, for people to read as well. */
public final class DrawerWriter {

    private DrawerWriter() {}

    /** The text of the file, with a line break at its end. */
    public static String write(Drawer drawer) {
        Map<String, Object> file = new LinkedHashMap<>();
        file.put(DrawerReader.FORMAT_KEY, (double) DrawerKeys.FORMAT);
        file.put("cells", drawer.cells().stream().map(DrawerWriter::cell).toList());
        drawer.foreign().ifPresent(other -> file.put(Keys.FOREIGN, other));
        return JsonLayout.lines(file) + "\n";
    }

    private static Map<String, Object> cell(OwnCell cell) {
        Map<String, Object> keys = new LinkedHashMap<>(cell.keys().values());
        List<Keys> measured =
                cell.measurements().stream().map(CellMeasurement::keys).toList();
        if (!measured.isEmpty()) {
            keys.put("measured", measured);
        }
        return keys;
    }
}
