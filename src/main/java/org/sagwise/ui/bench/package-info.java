/** The bench: a still canvas, a moving one, and the nodes to touch above them. */
package org.sagwise.ui.bench;
