package org.sagwise.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.CRC32;
import org.sagwise.scenario.Finding;
import org.sagwise.scenario.Problem;
import org.sagwise.scenario.Scenario;
import org.sagwise.scenario.ScenarioKeys;

/**
 * A whole scenario as one line of text to paste in a forum post.
 *
 * <p>{@code sagwise1:}, then the compact scenario file, deflated (RFC 1951) and written in
 * base64url without padding (RFC 4648), then a point and the CRC-32 of the deflated bytes as eight
 * hexadecimal digits. What stands before and behind it in a post does not matter, nor do spaces and
 * line breaks inside. The text comes from strangers: whatever it holds, the answer is a scenario or
 * words about what is wrong with it, and no more is expanded than a scenario file may have.
 */
public final class ShareText {

    /** How every share text of this format begins. */
    public static final String BEGINNING = "sagwise" + ScenarioKeys.FORMAT + ":";

    /** Most characters that a share text may have, spaces and line breaks not counted: 64 KiB. */
    public static final int MOST_CHARACTERS = 64 * 1024;

    /** Longer posts are not searched for a share text. */
    private static final int LONGEST_POST = 1024 * 1024;

    private static final Pattern HEAD = Pattern.compile("sagwise(\\d{1,9}):", Pattern.CASE_INSENSITIVE);

    /** Signs without a shape that forums and word processors put into long words. */
    private static final Pattern UNSEEN = Pattern.compile("[\u00AD\u200B-\u200F\u2060-\u2064\uFEFF]");

    /** More mentions of a share text than any post has. */
    private static final int MOST_HEADS = 20;

    /** Marks of quoting at the beginning of a line. */
    private static final Pattern QUOTED = Pattern.compile("(?m)^[ \\t]*(?:[>|][>| \\t]*)");

    /** How mail breaks a long line: quoted-printable, RFC 2045, 6.7. */
    private static final Pattern SOFT_BREAK = Pattern.compile("=[ \\t]*(?:\\r\\n|[\\n-\\r\\u0085\\u2028\\u2029])");

    /** A sign in quoted-printable, and where a page's source lets a long word break; the text itself has no such signs. */
    private static final Pattern CODED = Pattern.compile("=([0-9A-Fa-f]{2})");

    private static final Pattern MAY_BREAK = Pattern.compile("(?i)<(?:wbr|br) */?>|&(?:shy|zwnj|zwj|#8203);");

    /** What a short and a long dash may have been, one after the other: editors make one of two or three hyphens. */
    private static final List<String> DASHES = List.of("- -", "- --", "-- --", "-- ---");

    private ShareText() {}

    /** The share text of a scenario; empty if it is too large to be shared as text. */
    public static Optional<String> of(Scenario scenario) {
        byte[] json = ScenarioWriter.writeCompact(scenario).getBytes(StandardCharsets.UTF_8);
        byte[] packed = Deflated.pack(json);
        String text = BEGINNING
                + Base64.getUrlEncoder().withoutPadding().encodeToString(packed)
                + SharedBody.END
                + check(packed);
        return text.length() <= MOST_CHARACTERS && json.length <= SourceText.MOST_BYTES
                ? Optional.of(text)
                : Optional.empty();
    }

    /** Whether a text, such as a pasted post, holds something that begins as a share text does. */
    public static boolean isIn(String text) {
        return text.length() <= LONGEST_POST && isAnywhereIn(text);
    }

    private static boolean isAnywhereIn(String text) {
        return HEAD.matcher(seen(text)).find();
    }

    /**
     * Opens the first share text in a post that is whole. What mail and forums make of one is taken back: marks of
     * quoting, lines broken with a sign, dashes made long. If none is whole, the fullest is judged.
     *
     * @param post the share text, or any text around it
     * @param reader judges the scenario in it
     */
    public static Loaded read(String post, ScenarioReader reader) {
        if (post.length() > LONGEST_POST) {
            return refused(Problem.POST_TOO_LONG, String.valueOf(LONGEST_POST / 1024 / 1024), BEGINNING);
        }
        return readSeen(seen(post), reader);
    }

    private static String seen(String post) {
        return UNSEEN.matcher(post).replaceAll("");
    }

    private static Loaded readSeen(String post, ScenarioReader reader) {
        Matcher head = HEAD.matcher(post);
        if (!head.find()) {
            return refused(Problem.SHARE_MISSING, BEGINNING);
        }
        Loaded fullest = null;
        int most = -1;
        for (int tried = 0; tried < MOST_HEADS && (tried == 0 || head.find()); tried++) {
            Loaded loaded = read(post, head, reader);
            if (loaded.scenario().isPresent()) {
                return loaded;
            }
            int length = SharedBody.of(post, head.end()).length();
            if (length > most) {
                most = length;
                fullest = loaded;
            }
        }
        return fullest;
    }

    private static Loaded read(String post, Matcher head, ScenarioReader reader) {
        int format = Integer.parseInt(head.group(1));
        if (format != ScenarioKeys.FORMAT) {
            String ours = String.valueOf(ScenarioKeys.FORMAT);
            return format > ScenarioKeys.FORMAT
                    ? refused(Problem.NEWER_FORMAT, head.group(1), ours)
                    : refused(Problem.SHARE_UNKNOWN_FORMAT, head.group(1));
        }
        Loaded plain = opened(SharedBody.of(post, head.end()), reader);
        return plain.scenario().isPresent() || !isSpoilt(plain)
                ? plain
                : restored(post.substring(head.end()), reader).orElse(plain);
    }

    private static boolean isSpoilt(Loaded loaded) {
        return loaded.findings().stream()
                .anyMatch(it -> it.problem() == Problem.SHARE_CLIPPED || it.problem() == Problem.SHARE_DAMAGED);
    }

    /** What can be opened of a text that mail or a forum changed; its checksum tells whether a guess was right. */
    private static Optional<Loaded> restored(String after, ScenarioReader reader) {
        String whole = MAY_BREAK.matcher(QUOTED.matcher(after).replaceAll("")).replaceAll("");
        String lines = decoded(SOFT_BREAK.matcher(whole).replaceAll(""));
        for (String dashes : DASHES) {
            String[] each = dashes.split(" ");
            String text = lines.replaceAll("[\u2010-\u2013\u2212]", each[0]).replaceAll("[\u2014\u2015]", each[1]);
            Loaded loaded = opened(SharedBody.of(text, 0), reader);
            if (!isSpoilt(loaded)) {
                return Optional.of(loaded);
            }
        }
        return Optional.empty();
    }

    /** What a mail's source writes as {@code =2E} is the sign of that number again. */
    private static String decoded(String coded) {
        // A loop, since the regular expressions of a live page cannot replace by a function.
        StringBuilder decoded = new StringBuilder();
        Matcher sign = CODED.matcher(coded);
        int end = 0;
        while (sign.find()) {
            decoded.append(coded, end, sign.start()).append((char) Integer.parseInt(sign.group(1), 16));
            end = sign.end();
        }
        return decoded.append(coded, end, coded.length()).toString();
    }

    /**
     * Opens whatever a stream holds, as people hand scenarios on: a scenario file, or a post with a
     * share text in it. Reads as much as a scenario may have, and leaves the stream open.
     *
     * @throws IOException if the stream cannot be read
     */
    public static Loaded readFileOrPost(InputStream stream, ScenarioReader reader) throws IOException {
        return readFileOrPost(stream.readNBytes(SourceText.MOST_BYTES + 1), reader);
    }

    /**
     * Opens a text that somebody handed on: what a scenario file holds, or a post with a share text
     * in it. A text that is neither is judged as a post.
     */
    public static Loaded readFileOrPost(String text, ScenarioReader reader) {
        String bare = text.strip();
        return bare.startsWith("{") ? reader.read(bare.getBytes(StandardCharsets.UTF_8)) : read(text, reader);
    }

    private static Loaded readFileOrPost(byte[] bytes, ScenarioReader reader) {
        String text = new String(bytes, StandardCharsets.UTF_8).strip();
        boolean isPost = !text.startsWith("{") && isAnywhereIn(text);
        return isPost ? read(text, reader) : reader.read(bytes);
    }

    private static Loaded opened(SharedBody body, ScenarioReader reader) {
        if (body.length() + BEGINNING.length() > MOST_CHARACTERS) {
            return tooLong();
        }
        if (body.isCutOff()) {
            return refused(Problem.SHARE_CLIPPED);
        }
        Optional<byte[]> packed = bytes(body.packed());
        if (packed.isEmpty() || !check(packed.get()).equals(body.check())) {
            return refused(Problem.SHARE_DAMAGED);
        }
        Deflated.Unpacked json = Deflated.unpack(packed.get(), SourceText.MOST_BYTES);
        if (json.isTooLarge()) {
            return refused(Problem.SHARE_SWELLS, String.valueOf(SourceText.MOST_BYTES / 1024 / 1024));
        }
        return json.bytes().map(reader::read).orElseGet(() -> refused(Problem.SHARE_DAMAGED));
    }

    private static Optional<byte[]> bytes(String base64) {
        try {
            return Optional.of(Base64.getUrlDecoder().decode(base64));
        } catch (IllegalArgumentException odd) {
            return Optional.empty();
        }
    }

    private static String check(byte[] packed) {
        CRC32 sum = new CRC32();
        sum.update(packed);
        String digits = Long.toHexString(sum.getValue());
        return "0".repeat(SharedBody.CHECK_DIGITS - digits.length()) + digits;
    }

    private static Loaded tooLong() {
        return refused(Problem.SHARE_TOO_LONG, String.valueOf(MOST_CHARACTERS / 1024));
    }

    private static Loaded refused(Problem problem, String... details) {
        return new Loaded.Refused(List.of(Finding.of("", problem, details)));
    }
}
