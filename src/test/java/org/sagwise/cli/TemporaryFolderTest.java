package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sagwise.text.Texts;

class TemporaryFolderTest {

    private static final Texts TEXTS = Texts.in("cli-words", Locale.ENGLISH);

    @TempDir
    private Path folder;

    @Test
    void trouble_folderWithRoom_isNoneAndLeavesNothing() throws Exception {
        assertEquals(Optional.empty(), TemporaryFolder.trouble(folder, TEXTS));
        try (var left = Files.list(folder)) {
            assertEquals(0, left.count());
        }
    }

    @Test
    void trouble_noSuchFolder_isToldByName() {
        String told = TemporaryFolder.trouble(folder.resolve("gone"), TEXTS).orElseThrow();
        assertTrue(told.contains("gone") && told.contains("java.io.tmpdir"), told);
    }
}
