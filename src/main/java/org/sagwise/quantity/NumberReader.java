package org.sagwise.quantity;

import java.math.BigDecimal;
import java.text.DecimalFormatSymbols;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.sagwise.quantity.Parsed.Reason;

/** Reads the number at the front of a text. */
final class NumberReader {

    /** Sign, digits with marks and grouping spaces, exponent of at most three digits. */
    private static final Pattern NUMBER =
            Pattern.compile("([+-]?) ?((?:\\d{1,3}(?: \\d{3})+(?!\\d)|\\d[\\d.,']*|[.,]\\d+)(?:[.,]\\d+)?)"
                    + "(?:[eE]([+-]?\\d{1,3})(?![\\d.,]))?");

    private static final Pattern ONE_MARK = Pattern.compile("(\\d*)([.,])(\\d*)");
    private static final Pattern GROUPED = Pattern.compile("\\d{1,3}(?:([.,' ])\\d{3})(?:\\1\\d{3})*(?:([.,])\\d+)?");

    private NumberReader() {}

    /**
     * What was read.
     *
     * @param number the number, if there is no problem
     * @param rest what follows it, without surrounding space
     * @param problem why there is no number
     * @param readings for an ambiguous number: as written, and the two numbers it may mean
     */
    record Result(BigDecimal number, String rest, Optional<Reason> problem, List<String> readings) {

        static Result problem(Reason reason, String... readings) {
            return new Result(BigDecimal.ZERO, "", Optional.of(reason), List.of(readings));
        }
    }

    /** One kind of space, minus, micro and ohm sign, and none of them at the ends. */
    static String tidy(String text) {
        return text.replace('\u2126', '\u03a9')
                .replaceAll("[\\s\\u00a0\\u2007\\u2009\\u202f]+", " ")
                .strip()
                .replace('\u2212', '-')
                .replace('\u2013', '-')
                .replace('\u2019', '\'')
                .replace('\u03bc', '\u00b5')
                .replace('\u066b', '.');
    }

    static Result read(String text, Locale locale) {
        Matcher matcher = NUMBER.matcher(text);
        if (!matcher.lookingAt()) {
            return Result.problem(Reason.NOT_A_NUMBER);
        }
        String body = matcher.group(2);
        Optional<String> decimal = decimal(body);
        if (decimal.isEmpty()) {
            return Result.problem(Reason.NOT_A_NUMBER);
        }
        if (isAmbiguous(body, locale)) {
            return ambiguous(body, locale);
        }
        String exponent = matcher.group(3) == null ? "" : "e" + matcher.group(3);
        String sign = matcher.group(1).equals("-") ? "-" : "";
        return new Result(
                new BigDecimal(sign + decimal.get() + exponent),
                text.substring(matcher.end()).strip(),
                Optional.empty(),
                List.of());
    }

    /** The digits with a point before the decimals and no other mark; empty if they are muddled. */
    private static Optional<String> decimal(String body) {
        Matcher one = ONE_MARK.matcher(body);
        if (one.matches()) {
            String whole = one.group(1).isEmpty() ? "0" : one.group(1);
            return Optional.of(whole + "." + (one.group(3).isEmpty() ? "0" : one.group(3)));
        }
        if (body.chars().allMatch(Character::isDigit)) {
            return Optional.of(body);
        }
        Matcher grouped = GROUPED.matcher(body);
        if (!grouped.matches() || grouped.group(1).equals(grouped.group(2))) {
            return Optional.empty();
        }
        String mark = grouped.group(2);
        String whole = mark == null ? body : body.substring(0, body.lastIndexOf(mark));
        String digits = whole.replace(grouped.group(1), "");
        return Optional.of(mark == null ? digits : digits + "." + body.substring(whole.length() + 1));
    }

    /** Whether the only mark is this locale's thousands mark and stands where one would. */
    private static boolean isAmbiguous(String body, Locale locale) {
        Matcher one = ONE_MARK.matcher(body);
        char thousandsMark = DecimalFormatSymbols.getInstance(locale).getGroupingSeparator();
        return one.matches()
                && one.group(2).charAt(0) == thousandsMark
                && one.group(3).length() == 3
                && one.group(1).matches("[1-9]\\d{0,2}");
    }

    private static Result ambiguous(String body, Locale locale) {
        QuantityFormat format = QuantityFormat.forPeople(locale);
        double small = Double.parseDouble(body.replace(',', '.'));
        double large = Double.parseDouble(body.replaceAll("[.,]", ""));
        return Result.problem(
                Reason.AMBIGUOUS_NUMBER, body, format.number(small, Digits.all()), format.number(large, Digits.all()));
    }
}
