package org.sagwise.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.sagwise.quantity.Parsed;
import org.sagwise.quantity.QuantityParser;
import org.sagwise.quantity.Unit;

/** Reads numbers with their units. */
record NumberReader(QuantityParser numbers) {

    private static final Pattern NUMBER = Pattern.compile("([+\\-−–]?(?:\\d[\\d.,'’]*|[.,]\\d+))(.*)");

    static final Pattern SIGN = Pattern.compile("[+\\-−–]");

    /** The units in which a part says anything, the commonest first. */
    static final List<Unit> UNITS = List.of(
            Unit.VOLT,
            Unit.AMPERE,
            Unit.OHM,
            Unit.WATT,
            Unit.AMPERE_HOUR,
            Unit.FRACTION,
            Unit.METRE,
            Unit.SQUARE_METRE,
            Unit.CELSIUS,
            Unit.SECOND,
            Unit.AMPERE_SQUARED_SECOND);

    /** Reads the number at the front and says how many words it took; none where there is no number. */
    int read(List<Word> words, List<Item> items) {
        Matcher number = NUMBER.matcher(joinedSign(words));
        return number.matches() ? read(words, number, items) : 0;
    }

    /** A number with the unit that is written to it, or behind it, or with none. */
    private int read(List<Word> words, Matcher number, List<Item> items) {
        int taken = isSign(words, 1) ? 2 : 1;
        String digits = number.group(1);
        Span span = words.get(0).span().to(words.get(taken - 1).span());
        String glued = number.group(2);
        if (!glued.isEmpty()) {
            items.add(amount(span, digits, glued).orElseGet(() -> new Item.Strange(span, glued)));
            return taken;
        }
        // "coil 2 200 mohm" is a coil and its ohms, not 2200 of them: digits with a gap between are two numbers here.
        boolean gap = taken < words.size()
                && Character.isDigit(words.get(taken).text().charAt(0));
        for (int more = gap ? 0 : Math.min(2, words.size() - taken); more > 0; more--) {
            String unit = String.join(
                    " ",
                    words.subList(taken, taken + more).stream().map(Word::text).toList());
            Span both = span.to(words.get(taken + more - 1).span());
            if (unit.equalsIgnoreCase("awg") && digits.matches("\\d{1,2}")) {
                items.add(new Item.Gauge(both, Integer.parseInt(digits)));
                return taken + more;
            }
            Optional<Item> amount = amount(both, digits, unit);
            if (amount.isPresent()) {
                items.add(amount.get());
                return taken + more;
            }
        }
        Parsed parsed = numbers.parse(digits, Unit.FRACTION);
        items.add(
                parsed instanceof Parsed.Refused refused
                        ? odd(span, refused)
                        : new Item.Bare(span, digits, parsed.value().orElseThrow()));
        return taken;
    }

    private Optional<Item> amount(Span span, String digits, String written) {
        return UNITS.stream()
                .flatMap(unit -> spelled(unit, written).map(it -> read(span, digits, it, unit)).stream())
                .findFirst();
    }

    /** The spelling of this unit that somebody means, who may have written the whole of it in capitals. */
    private Optional<String> spelled(Unit unit, String written) {
        if (written.isBlank()) {
            return Optional.empty();
        }
        String calm = written.charAt(0) + written.substring(1).toLowerCase(Locale.ROOT);
        return Stream.of(written, calm)
                .filter(it -> numbers.parse("1 " + it, unit).value().isPresent())
                .findFirst();
    }

    private Item read(Span span, String digits, String spelled, Unit unit) {
        Parsed parsed = numbers.parse(digits + " " + spelled, unit);
        return parsed instanceof Parsed.Refused refused
                ? odd(span, refused)
                : new Item.Amount(span, unit, parsed.value().orElseThrow());
    }

    private static Item odd(Span span, Parsed.Refused refused) {
        return new Item.Odd(span, Complaint.of(span, new WordsFault.BadNumber(refused)));
    }

    /** Whether the only one of so many words is the sign of a number behind it. */
    static boolean isSign(List<Word> words, int count) {
        return count == 1
                && words.size() > 1
                && SIGN.matcher(words.get(0).text()).matches()
                && Character.isDigit(words.get(1).text().charAt(0));
    }

    private static String joinedSign(List<Word> words) {
        return isSign(words, 1)
                ? words.get(0).text() + words.get(1).text()
                : words.get(0).text();
    }
}
