package org.sagwise.hazard;

/** What a hazard bears on beside the caution that it gives: a row of {@link Hazard} names as many as it likes. */
sealed interface Bearing permits Hides, Spends, Cures, Foretold {}
