/** What whoever leads a class has beside the window that the class sees. */
package org.sagwise.ui.lesson.lead;
