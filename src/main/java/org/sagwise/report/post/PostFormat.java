package org.sagwise.report.post;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.text.Signs;

/** The formats in which a post can be written. */
public enum PostFormat {
    MARKDOWN,
    BBCODE,
    TEXT,
    HTML;

    /** The word for it on a command line. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<PostFormat> ofWord(String word) {
        return Stream.of(values())
                .filter(format -> format.word().equals(word.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** Whether it can hold a picture. */
    public boolean hasPictures() {
        return this == HTML;
    }

    /** The blocks of a post as HTML to stand in another page. */
    public static String htmlBody(List<Block> post, Locale locale, Signs signs) {
        return HtmlPost.body(post, locale, signs);
    }

    /**
     * Writes a post, its last line with a line break.
     *
     * @param post the blocks
     * @param locale its language
     * @param signs whether more than ASCII may be used
     */
    public String write(List<Block> post, Locale locale, Signs signs) {
        return switch (this) {
            case MARKDOWN -> MarkedPost.write(post, new Commonmark(), signs);
            case BBCODE -> MarkedPost.write(post, new Bbcode(), signs);
            case TEXT -> new TextPost(signs).write(post);
            case HTML -> new HtmlPost(locale, signs).write(post);
        };
    }
}
