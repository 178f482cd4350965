package org.sagwise.run;

import java.util.List;

/**
 * What a stretch of time brought.
 *
 * @param state the state at its end
 * @param events what happened in it, in order of time
 * @param passed states on the way, the one at the end last: close enough together that straight
 *     lines between them show the course; two at one time where something jumps
 */
public record Advance(RunState state, List<RunEvent> events, List<RunState> passed) {}
