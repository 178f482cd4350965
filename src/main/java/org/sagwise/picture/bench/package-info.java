/** Paints the bench: the still picture, and the chevrons that drift over it. */
package org.sagwise.picture.bench;
