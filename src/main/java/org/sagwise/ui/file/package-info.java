/** Opening and saving: files, dialogs about them, and files dragged in. */
package org.sagwise.ui.file;
