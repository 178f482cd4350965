package org.sagwise.report.picture;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** The kinds of file that a picture can be written as. */
public enum PictureFormat {
    PNG,
    SVG,
    PDF;

    /** Ending of file names, without the dot. */
    public String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The format that a file name's ending asks for, in upper or lower case. */
    public static Optional<PictureFormat> ofFileName(String name) {
        String lower = name.toLowerCase(Locale.ROOT);
        return Stream.of(values())
                .filter(format -> lower.endsWith("." + format.ending()))
                .findFirst();
    }
}
