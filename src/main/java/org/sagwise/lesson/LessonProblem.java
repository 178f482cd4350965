package org.sagwise.lesson;

import java.util.List;
import java.util.Locale;
import org.sagwise.scenario.Fault;
import org.sagwise.text.Texts;

/** What can be wrong with a lesson; each has a sentence in the bundle {@code lesson-problems}. */
public enum LessonProblem implements Fault {
    // The file.
    NO_LESSON_FILE,
    UNREADABLE,
    TOO_LARGE,
    BROKEN_YAML,
    ALIAS,
    MISSING_KEY,
    NOT_A_GROUP,
    NOT_A_LIST,
    NOT_A_WORD,
    NOT_A_PAIR,
    NOT_A_NUMBER,
    UNKNOWN_WORD,
    MISSPELT,
    BAD_ID,
    DUPLICATE_ID,
    TOO_FEW,
    TOO_MANY,
    MISSING_LANGUAGE,
    BAD_TERMINAL,
    BAD_READING,
    ONE_OF,
    FIXED_KEY,
    UNKNOWN_BENCH,
    BENCH_FILE,
    // What the questions ask.
    RIGHT_ANSWERS,
    NO_IDEA,
    RIGHT_WITH_IDEA,
    // What the engine says.
    UNKNOWN_PART,
    PART_MISSPELT,
    MOVE_REFUSED,
    UNKNOWN_CAUTION,
    READING_EMPTY,
    READING_MISSPELT,
    DONE_AT_START,
    NOT_SOLVED,
    NOT_MET,
    UNEXPECTED_READING,
    // How it teaches.
    PREDICT_FIRST,
    NO_CHECK,
    NO_CAUTION,
    CHECK_NOT_LAST,
    SAME_PLACE,
    BARE_NUMBER,
    DIFFERENT_BLANKS,
    LONG_TEXT,
    LONG_SENTENCE,
    FORBIDDEN_WORD,
    UNNAMED_PART,
    OPTION_DIGITS,
    OPTION_REASON,
    WHY_GIVEN,
    ALSO_OFTEN,
    OPTION_LENGTH,
    ALWAYS_SHORTEST,
    ALWAYS_LONGEST,
    EQUAL_OPTIONS,
    THIN_REPLY,
    WIDE_TOLERANCE,
    NOTHING_SHOWS_IT,
    SEEN_BEFORE,
    JOINT_MATTERS,
    NO_SUCH_CONTROL,
    TELLING_HEAD,
    MINUTES,
    SKIP_BREAKS,
    // The set.
    LONG_EVENING,
    UNKNOWN_LESSON,
    NEEDS_EACH_OTHER;

    @Override
    public String bundle() {
        return "lesson-problems";
    }

    @Override
    public String sentence(String place, List<String> details, Locale locale) {
        return this == BROKEN_YAML
                ? Texts.in(bundle(), locale).say(key() + "." + details.get(0), details.get(1))
                : Fault.super.sentence(place, details, locale);
    }
}
