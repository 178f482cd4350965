/**
 * The drawer: a person's own cells, what was measured on them and when, and which belong together.
 * Immutable; kept in a file by the room {@code file}.
 */
package org.sagwise.plan.drawer;
