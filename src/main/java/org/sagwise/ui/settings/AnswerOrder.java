package org.sagwise.ui.settings;

/** In which order the answers of a question stand. */
public enum AnswerOrder {
    /** As in the lesson, and as on its printed sheets. */
    AS_WRITTEN,
    /** Another one in each run of a lesson. */
    SHUFFLED
}
