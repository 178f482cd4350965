/** Two benches side by side: what differs in build and in outcome. */
package org.sagwise.ui.compare;
