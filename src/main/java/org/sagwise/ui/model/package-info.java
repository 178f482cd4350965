/**
 * What the views show: document with history, fire button, what is picked out. No toolkit but
 * JavaFX's observable values.
 */
package org.sagwise.ui.model;
