package org.sagwise.file;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.LongRange;
import org.sagwise.part.Catalogue;
import org.sagwise.plan.drawer.Drawer;
import org.sagwise.scenario.Finding;

/** Spoilt files and tables are read or refused in words, and never anything else. */
class DrawerStrangersProperties {

    private static final Catalogue CATALOGUE = CatalogueLoader.builtIn();
    private static final Drawer DEMO = DemoDrawer.of(CATALOGUE, Locale.ENGLISH);
    private static final byte[] SCRAPS =
            "\"\\,;\t\n\r'={}[]:0.5e-9999,null true\ufeff\u0000retired L1 2026-02-30".getBytes(StandardCharsets.UTF_8);

    private static byte[] spoilt(String text, Random chance) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        for (int i = chance.nextInt(4); i >= 0; i--) {
            int at = chance.nextInt(bytes.length);
            bytes[at] = chance.nextInt(4) == 0 ? (byte) chance.nextInt(256) : SCRAPS[chance.nextInt(SCRAPS.length)];
        }
        return chance.nextInt(5) == 0 ? Arrays.copyOf(bytes, chance.nextInt(bytes.length)) : bytes;
    }

    private static void assertTold(List<Finding> findings) {
        assertFalse(findings.isEmpty());
        for (Locale locale : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            findings.forEach(it -> assertTrue(it.text(locale).length() > 5));
        }
    }

    @Property(tries = 150)
    void file_spoilt_isReadOrRefusedInWords(@ForAll @LongRange(min = 1, max = 1_000_000) long seed) {
        byte[] bytes = spoilt(DrawerWriter.write(DEMO), new Random(seed));
        if (DrawerReader.read(bytes, CATALOGUE) instanceof DrawerReader.Read.Refused refused) {
            assertTold(refused.findings());
        }
    }

    @Property(tries = 150)
    void table_spoilt_isReadOrRefusedInWords(@ForAll @LongRange(min = 1, max = 1_000_000) long seed) {
        Random chance = new Random(seed);
        DrawerCsv.Style style = DrawerCsv.Style.values()[chance.nextInt(2)];
        byte[] bytes = spoilt(DrawerCsv.write(DEMO, style), chance);
        if (DrawerCsv.read(bytes, DEMO, CATALOGUE, DrawerCsv.Precedence.NEITHER)
                instanceof DrawerCsv.Read.Refused refused) {
            assertTold(refused.findings());
        }
    }
}
