/** The work at the bench: what is in hand and chosen, the edits made with it, their controls. */
package org.sagwise.ui.work;
