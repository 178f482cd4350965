/**
 * What pictures look like: themes and their colours, the published colour scales, the bundled
 * typeface, and the pen with which every painter draws.
 */
package org.sagwise.picture.look;
