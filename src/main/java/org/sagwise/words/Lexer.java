package org.sagwise.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.sagwise.part.CellFormat;
import org.sagwise.part.Chemistry;
import org.sagwise.quantity.QuantityParser;

/** Takes a line apart into clauses of items. Used for one line and thrown away. */
final class Lexer {

    private static final Pattern WORD = Pattern.compile("[^\\s;]+|[;\\n]");
    private static final Pattern BARE_ENDS = Pattern.compile("^[(\\[\"“„'’]*(.*?)[),:!?\\]\"”“'’.]*$");
    private static final Pattern ROWS = Pattern.compile("(?i)(\\d{1,3})s(?:(\\d{1,3})p)?");
    private static final Pattern SIDES = Pattern.compile("(?i)(\\d{1,3})p(?:(\\d{1,3})s)?");
    private static final Pattern GAUGE = Pattern.compile("(?i)(?:awg-?(\\d{1,2})|(\\d{1,2})-?awg)");
    private static final Pattern TIMES = Pattern.compile("(\\d{1,3})[x×](.*)");
    private static final Pattern MADE = Pattern.compile("(?i)([A-Z]{3})-?(\\d{5})");
    /** Before the digits of what a number written as a word means. */
    private static final String NUMBER_WORD = "number.";

    private final Vocabulary vocabulary = Vocabulary.all();
    private final Set<String> entries;
    private final NumberReader numbers;

    /**
     * @param entries every id of the catalogue
     * @param locale whose thousands mark is watched for
     */
    Lexer(Set<String> entries, Locale locale) {
        this.entries = entries;
        this.numbers = new NumberReader(new QuantityParser(locale));
    }

    /** The clauses of a line, none of them empty. */
    List<List<Item>> clauses(String line) {
        List<List<Item>> clauses = new ArrayList<>();
        List<Word> words = new ArrayList<>();
        boolean comma = false;
        Matcher word = WORD.matcher(line.replace('\r', '\n').replace('\n', ';'));
        while (word.find()) {
            if (word.group().equals(";")) {
                add(clauses, words);
                continue;
            }
            Optional<Word> bare = bare(word);
            if (comma && bare.isPresent() && opensClause(bare.get(), words)) {
                add(clauses, words);
            }
            bare.ifPresent(words::add);
            comma = word.group().endsWith(",");
        }
        add(clauses, words);
        return clauses;
    }

    /** Behind a comma people begin with the next thing, too. */
    private boolean opensClause(Word word, List<Word> before) {
        if (isLetter(word)) {
            return !before.stream().allMatch(Lexer::isLetter);
        }
        Set<String> ids = vocabulary.meanings(word.text().toLowerCase(Locale.ROOT));
        return Stream.of(Clause.values())
                .filter(clause -> clause.kind().isPresent() || clause == Clause.WIRE)
                .anyMatch(clause -> clause != Clause.CELLS && ids.contains(clause.word()));
    }

    private void add(List<List<Item>> clauses, List<Word> words) {
        List<Item> items = items(words);
        if (!items.isEmpty()) {
            clauses.add(items);
        }
        words.clear();
    }

    private static boolean isLetter(Word word) {
        return word.text().matches("[A-Z]");
    }

    /** A word without the marks around it; a mark alone says nothing. */
    private static Optional<Word> bare(Matcher word) {
        if (NumberReader.SIGN.matcher(word.group()).matches()) {
            return Optional.of(new Word(word.group(), word.start()));
        }
        Matcher ends = BARE_ENDS.matcher(word.group());
        return ends.matches() && !ends.group(1).isEmpty()
                ? Optional.of(new Word(ends.group(1), word.start() + ends.start(1)))
                : Optional.empty();
    }

    private List<Item> items(List<Word> words) {
        List<Item> items = new ArrayList<>();
        int at = 0;
        while (at < words.size()) {
            at += item(words.subList(at, words.size()), items);
        }
        items.removeIf(item -> item instanceof Item.Phrase phrase && phrase.means(Vocabulary.FILLER));
        return items;
    }

    /** Reads the item at the front and says how many words it took. */
    private int item(List<Word> words, List<Item> items) {
        Word first = words.get(0);
        if (isLetter(first)) {
            items.add(new Item.Letter(first.span(), first.text().charAt(0) - 'A'));
            return 1;
        }
        int phrase = phrase(words, items);
        if (phrase > 0) {
            return phrase;
        }
        if (arranged(first, items) || gauge(first, items) || named(first, items)) {
            return 1;
        }
        if (first.text().matches("[x×]")
                && !items.isEmpty()
                && items.get(items.size() - 1) instanceof Item.Bare before) {
            if (before.text().matches("\\d{1,3}")) {
                items.set(items.size() - 1, new Item.Times(before.span(), (int) before.value()));
                return 1;
            }
        }
        Matcher times = TIMES.matcher(first.text());
        if (times.matches()) {
            items.add(new Item.Times(first.span(), Integer.parseInt(times.group(1))));
            if (times.group(2).isEmpty()) {
                return 1;
            }
            List<Word> rest = new ArrayList<>(words);
            rest.set(0, new Word(times.group(2), first.start() + times.start(2)));
            return item(rest, items);
        }
        int number = numbers.read(words, items);
        if (number > 0) {
            return number;
        }
        items.add(new Item.Strange(first.span(), first.text()));
        return 1;
    }

    /** The longest phrase at the front. */
    private int phrase(List<Word> words, List<Item> items) {
        for (int count = Math.min(vocabulary.longest(), words.size()); count > 0; count--) {
            String text = String.join(
                            " ",
                            words.subList(0, count).stream().map(Word::text).toList())
                    .toLowerCase(Locale.ROOT);
            Set<String> ids = vocabulary.meanings(text);
            if (!ids.isEmpty() && !NumberReader.isSign(words, count)) {
                Span span = words.get(0).span().to(words.get(count - 1).span());
                items.add(number(ids)
                        .<Item>map(number -> new Item.Bare(span, number, Double.parseDouble(number)))
                        .orElseGet(() -> new Item.Phrase(span, text, ids)));
                return count;
            }
        }
        return 0;
    }

    /** The digits of a number that is written as a word. */
    private static Optional<String> number(Set<String> ids) {
        return ids.stream()
                .filter(id -> id.startsWith(NUMBER_WORD))
                .map(id -> id.substring(NUMBER_WORD.length()))
                .findFirst();
    }

    private static boolean arranged(Word word, List<Item> items) {
        Matcher rows = ROWS.matcher(word.text());
        Matcher sides = SIDES.matcher(word.text());
        if (rows.matches()) {
            items.add(new Item.Arranged(word.span(), count(rows.group(1)), count(rows.group(2))));
        } else if (sides.matches()) {
            items.add(new Item.Arranged(word.span(), count(sides.group(2)), count(sides.group(1))));
        } else {
            return false;
        }
        return true;
    }

    private static int count(String digits) {
        return digits == null ? 1 : Integer.parseInt(digits);
    }

    private static boolean gauge(Word word, List<Item> items) {
        Matcher gauge = GAUGE.matcher(word.text());
        if (!gauge.matches()) {
            return false;
        }
        String digits = gauge.group(1) == null ? gauge.group(2) : gauge.group(1);
        items.add(new Item.Gauge(word.span(), Integer.parseInt(digits)));
        return true;
    }

    /** A chemistry, a format or a name of the catalogue. */
    private boolean named(Word word, List<Item> items) {
        String text = word.text();
        Optional<String> entry = entries.stream().filter(text::equalsIgnoreCase).findFirst();
        if (entry.isPresent()) {
            items.add(new Item.Entry(word.span(), entry.get()));
            return true;
        }
        Matcher made = MADE.matcher(text);
        if (made.matches()) {
            return chemistry(word, made.group(1), items) && format(word, made.group(2), items);
        }
        return chemistry(word, text, items) || format(word, text, items);
    }

    private static boolean chemistry(Word word, String text, List<Item> items) {
        Optional<Chemistry> known = Stream.of(Chemistry.values())
                .filter(chemistry -> chemistry.name().equalsIgnoreCase(text))
                .findFirst();
        known.ifPresent(chemistry -> items.add(new Item.Make(word.span(), "chemistry", chemistry.name())));
        return known.isPresent();
    }

    private static boolean format(Word word, String text, List<Item> items) {
        Optional<CellFormat> known = CellFormat.ofTrade(text);
        known.ifPresent(format -> items.add(new Item.Make(word.span(), "format", format.trade())));
        return known.isPresent();
    }
}
