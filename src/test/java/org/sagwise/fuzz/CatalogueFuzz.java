package org.sagwise.fuzz;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.provider.MethodSource;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.file.CatalogueSource;
import org.sagwise.part.KindDescriptor;
import org.sagwise.part.PartKind;

/**
 * Whatever one file of a catalogue holds, reading the catalogue ends in one or in its defects. The
 * first byte, a letter, says which file; the others are what stands in it. The files beside it are
 * empty, so that what is new in one is not hidden by what the others do anyway.
 */
class CatalogueFuzz {

    /** What sources say, which all other files cite. */
    private static final String TEXTS = "sources.json";

    /** New ones come last: an input that is kept names its file by its place. */
    private static final List<String> OLDEST = List.of(
            "alloys.json",
            "boards.json",
            "cells.json",
            "chargers.json",
            "chemistries.json",
            "coils.json",
            "contacts.json",
            "fuses.json",
            "reverse-guards.json",
            "jumpers.json",
            TEXTS,
            "switches.json");

    private static final List<String> FILES = Stream.concat(
                    OLDEST.stream(),
                    Stream.of(PartKind.values())
                            .flatMap(kind -> kind.descriptor().family().stream())
                            .map(KindDescriptor.Family::file))
            .distinct()
            .toList();

    private static final CatalogueSource SOUND = CatalogueLoader.builtInSource();

    static Stream<byte[]> files() {
        return FixedInputs.of(
                IntStream.range(0, FILES.size())
                        .mapToObj(CatalogueFuzz::letterAndFile)
                        .toList(),
                2000);
    }

    private static byte[] letterAndFile(int which) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write('a' + which);
        try (InputStream file = SOUND.open(FILES.get(which)).orElseThrow()) {
            file.transferTo(bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    @MethodSource("files")
    @FuzzTest
    void catalogue(byte[] letterAndFile) {
        if (letterAndFile.length > 0) {
            String file = FILES.get(Math.floorMod(letterAndFile[0] - 'a', FILES.size()));
            byte[] bytes = Arrays.copyOfRange(letterAndFile, 1, letterAndFile.length);
            Effort.bounded(() -> Answers.of(CatalogueLoader.read(with(file, bytes))));
        }
    }

    private static CatalogueSource with(String file, byte[] bytes) {
        return name -> {
            if (name.equals(file)) {
                return Optional.of(new ByteArrayInputStream(bytes));
            }
            return name.equals(TEXTS) ? SOUND.open(name) : Optional.of(empty());
        };
    }

    private static InputStream empty() {
        return new ByteArrayInputStream(new byte[] {'[', ']'});
    }
}
