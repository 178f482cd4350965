package org.sagwise.report.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.sagwise.assessment.Moment;
import org.sagwise.assessment.fix.Cure;
import org.sagwise.picture.layout.Drawing;
import org.sagwise.picture.look.Theme;
import org.sagwise.report.picture.BenchPicture;
import org.sagwise.report.picture.PictureSize;
import org.sagwise.report.picture.QrPicture;
import org.sagwise.report.post.Block;
import org.sagwise.scenario.Press;
import org.sagwise.text.Texts;

/** Pictures of a bench as built and corrected, as SVG to stand inside an HTML file. */
final class InlinePictures {

    private final Locale locale;

    InlinePictures(Locale locale) {
        this.locale = locale;
    }

    List<Block.Picture> of(Moment moment, Optional<Cure> cure) {
        List<Block.Picture> pictures = new ArrayList<>();
        pictures.add(picture("picture.built", moment));
        cure.ifPresent(it -> pictures.add(picture("picture.corrected", Moment.start(it.after()))));
        return pictures;
    }

    /** Share text as a QR code; empty where it does not fit into one. */
    Optional<Block.Picture> code(String shareText, String title) {
        return QrPicture.of(shareText, title, locale).map(code -> inline("picture.code", title, code.svg()));
    }

    private Block.Picture picture(String key, Moment moment) {
        String svg = BenchPicture.svg(moment.with(Press.HELD), Drawing.BENCH, locale, Theme.LIGHT, PictureSize.FORUM);
        return inline(key, moment.assessment().scenario().title(), svg);
    }

    private Block.Picture inline(String key, String title, String svg) {
        return new Block.Picture(Texts.in("report", locale).say(key, title), svg);
    }
}
