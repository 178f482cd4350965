/** What can be heard of the bench, if somebody wants it: made by the program, off at first. */
package org.sagwise.ui.sound;
