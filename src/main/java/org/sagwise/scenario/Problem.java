package org.sagwise.scenario;

import java.util.List;
import java.util.Locale;

/**
 * What can be wrong with a scenario or its file. Each has a text in the bundle {@code problems}
 * under {@link #key()}; tests and programs compare these, people read the texts.
 */
public enum Problem implements Fault {
    NOT_JSON,
    NOT_UTF8,
    TOO_LARGE,
    TOO_DEEP,
    DUPLICATE_KEY,
    NOT_AN_OBJECT,
    NO_FORMAT,
    UNKNOWN_FORMAT,
    NEWER_FORMAT,
    UNKNOWN_KEY,
    MISSING_KEY,
    WRONG_TYPE,
    NOT_FINITE,
    OUT_OF_RANGE,
    NOT_WHOLE,
    NOT_A_CHOICE,
    TOO_LONG,
    BAD_ID,
    DUPLICATE_ID,
    UNKNOWN_KIND,
    UNKNOWN_MODEL,
    MODEL_OF_ANOTHER_KIND,
    UNKNOWN_ALLOY,
    BAD_TERMINAL,
    UNKNOWN_PART,
    UNKNOWN_TERMINAL,
    UNKNOWN_LINK,
    NOTHING_TO_CUT,
    SELF_LINK,
    NEEDS_ONE_OF,
    CLASH,
    NEEDS_TOGETHER,
    NEEDS_MODEL_OR,
    UPSIDE_DOWN,
    TOO_MANY_PARTS,
    TOO_MANY_LINKS,
    TOO_MANY_NOTES,
    NOTE_ON_NOTHING,
    PLACEMENT_OF_NOTHING,
    TOO_MANY_PROBLEMS,
    FILE_MISSING,
    FILE_IS_FOLDER,
    FILE_IS_NO_FILE,
    FILE_UNREADABLE,
    FILE_UNWRITABLE,
    FOLDER_MISSING,
    FOLDER_UNWRITABLE,
    DISK_FULL,
    SAVE_FAILED,
    SHARE_MISSING,
    SHARE_CLIPPED,
    SHARE_DAMAGED,
    SHARE_TOO_LONG,
    POST_TOO_LONG,
    SHARE_SWELLS,
    SHARE_UNKNOWN_FORMAT;

    @Override
    public String bundle() {
        return "problems";
    }

    @Override
    public String sentence(String place, List<String> details, Locale locale) {
        return ProblemTexts.sentence(this, place, details, locale);
    }
}
