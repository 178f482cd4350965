/** A round cell cut lengthwise, with its parts told. */
package org.sagwise.picture.section;
