package org.sagwise.report.picture;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Locale;
import java.util.Optional;

/**
 * A share text as a QR code (ISO/IEC 18004), under the title of its scenario and over the notice
 * that this is a teaching model.
 */
public final class QrPicture {

    /**
     * Most characters of a share text that a code holds at its lowest level of error correction:
     * 2,953 bytes in version 40 (ISO/IEC 18004).
     */
    public static final int MOST_CHARACTERS = 2953;

    private final ByteMatrix modules;
    private final String title;
    private final Locale locale;

    private QrPicture(ByteMatrix modules, String title, Locale locale) {
        this.modules = modules;
        this.title = title;
        this.locale = locale;
    }

    /** The code of a text; empty if the text is too long for one. */
    public static Optional<QrPicture> of(String text, String title, Locale locale) {
        return code(text, ErrorCorrectionLevel.M)
                .or(() -> code(text, ErrorCorrectionLevel.L))
                .map(modules -> new QrPicture(modules, title, locale));
    }

    private static Optional<ByteMatrix> code(String text, ErrorCorrectionLevel level) {
        try {
            return Optional.of(Encoder.encode(text, level).getMatrix());
        } catch (WriterException tooLong) {
            return Optional.empty();
        }
    }

    /**
     * Writes the picture. The stream is not closed.
     *
     * @throws IOException if the stream cannot be written to
     */
    public void write(PictureFormat format, OutputStream out) throws IOException {
        BenchPicture.write(sheet(), title, format, locale, sheet().size(), out);
    }

    /** The picture as an element of SVG, to stand in a page of HTML. */
    public String svg() {
        return SvgPicture.svg(sheet(), title, locale, sheet().size());
    }

    private QrSheet sheet() {
        return new QrSheet(modules, title, locale);
    }
}
