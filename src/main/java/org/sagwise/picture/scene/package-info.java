/**
 * What a bench picture shows: a layout with its readings and cautions, what is emphasised, and the
 * window through which it is seen.
 */
package org.sagwise.picture.scene;
