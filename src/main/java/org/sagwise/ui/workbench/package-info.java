/** What can be done at the bench: edits as commands, tools in hand and the shelf that parts come from. */
package org.sagwise.ui.workbench;
