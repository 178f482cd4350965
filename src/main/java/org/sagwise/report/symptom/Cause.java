package org.sagwise.report.symptom;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * What can bring a symptom about.
 *
 * @param id key of its texts
 * @param sign finds it in the numbers of a bench: what the sentence about it tells, names of parts and joints,
 *     {@link Evidence.Number}s and cautions; empty if the bench does not show it
 */
record Cause(String id, Function<Evidence, Optional<List<Object>>> sign) {}
