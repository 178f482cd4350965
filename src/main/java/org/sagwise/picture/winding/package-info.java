/** A wound coil, drawn to scale. */
package org.sagwise.picture.winding;
