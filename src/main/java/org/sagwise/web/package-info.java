/** The writer of live pages: one file with bench, explanation and engine. */
package org.sagwise.web;
