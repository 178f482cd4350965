/** Parts and readings as a plain table. */
package org.sagwise.ui.table;
