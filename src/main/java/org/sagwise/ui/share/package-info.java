/**
 * Handing a bench on: as share text, as a picture, as a post; and taking one that was handed on.
 */
package org.sagwise.ui.share;
