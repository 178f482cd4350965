package org.sagwise.report.picture;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import org.sagwise.report.pen.Pixels;

/** Pictures by which a desktop knows the program and its files. */
public enum Icon {
    /** A staircase on a tile: up through a cell, a hatched step for sag, down through the coil. */
    PROGRAM,
    /** The same staircase on a sheet of paper. */
    SCENARIO;

    private static final int DRAWN_SIZE = 512;

    /**
     * Writes it as PNG. The stream is not closed.
     *
     * @param side width and height, pixels
     * @throws IOException if the stream cannot be written to
     */
    public void writePng(int side, OutputStream out) throws IOException {
        Pixels.writePng(side, side, false, new IconSheet(this, side)::paint, out);
    }

    /**
     * Writes it as SVG. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public void writeSvg(OutputStream out) throws IOException {
        SvgPicture.write(
                new IconSheet(this, DRAWN_SIZE), "Sagwise", Locale.ROOT, new PictureSize(DRAWN_SIZE, DRAWN_SIZE), out);
    }
}
