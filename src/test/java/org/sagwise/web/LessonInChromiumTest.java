package org.sagwise.web;

/** Lessons as pages in chromium. */
final class LessonInChromiumTest extends LessonInBrowserTest {

    LessonInChromiumTest() {
        super(Browser.Kind.CHROMIUM);
    }
}
