package org.sagwise.ui.kit;

import java.util.concurrent.Executor;

/**
 * Who does what: time is computed behind the scenes and shown in front.
 *
 * @param behind does one thing after the other
 * @param front the thread of the window
 */
public record Threads(Executor behind, Executor front) {}
