/** The benches that come with the program, to try. */
package org.sagwise.ui.demo;
