/** The staircase of potential under the bench. */
package org.sagwise.ui.staircase;
