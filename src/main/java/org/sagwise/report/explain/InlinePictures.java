package org.sagwise.report.explain;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import org.sagwise.assessment.Moment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.picture.export.BenchPicture;
import org.sagwise.picture.export.PictureFormat;
import org.sagwise.picture.export.PictureSize;
import org.sagwise.picture.export.QrPicture;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.reading.Press;
import org.sagwise.report.post.Block;
import org.sagwise.text.Texts;

/** Pictures of a bench as built and corrected, as SVG to stand inside an HTML file. */
final class InlinePictures {

    private static final Pattern PROLOGUE =
            Pattern.compile("^\\s*(<\\?xml.*?\\?>)?\\s*(<!DOCTYPE[^>]*>)?\\s*", Pattern.DOTALL);

    private static final Pattern ID = Pattern.compile("(\\sid=\"|url\\(#|href=\"#)");

    private final Locale locale;

    InlinePictures(Locale locale) {
        this.locale = locale;
    }

    List<Block.Picture> of(Moment moment, Optional<Cure> cure) {
        List<Block.Picture> pictures = new ArrayList<>();
        pictures.add(picture("picture.built", "a-", moment));
        cure.ifPresent(it -> pictures.add(picture("picture.corrected", "b-", Moment.start(it.after()))));
        return pictures;
    }

    /** Share text as a QR code; empty where it does not fit into one. */
    Optional<Block.Picture> code(String shareText, String title) {
        return QrPicture.of(shareText, title, locale).map(code -> inline("picture.code", "c-", title, svg(code)));
    }

    private static byte[] svg(QrPicture code) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            code.write(PictureFormat.SVG, bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return bytes.toByteArray();
    }

    /**
     * @param prefix goes before every id, so that two pictures in one file do not mix theirs up
     */
    private Block.Picture picture(String key, String prefix, Moment moment) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            BenchPicture.write(
                    moment.with(Press.HELD),
                    Drawing.BENCH,
                    PictureFormat.SVG,
                    locale,
                    Theme.LIGHT,
                    PictureSize.FORUM,
                    bytes);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return inline(key, prefix, moment.assessment().scenario().title(), bytes.toByteArray());
    }

    private Block.Picture inline(String key, String prefix, String title, byte[] svg) {
        String bare = PROLOGUE.matcher(new String(svg, StandardCharsets.UTF_8)).replaceFirst("");
        String description = Texts.in("report", locale).say(key, title);
        return new Block.Picture(description, ID.matcher(bare).replaceAll("$1" + prefix));
    }
}
