/** The document on the bench with all that is computed of it, its files, and what is kept of it for a crash. */
package org.sagwise.ui.document;
