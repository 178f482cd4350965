package org.sagwise.web;

/** Lessons as pages in firefox. */
final class LessonInFirefoxTest extends LessonInBrowserTest {

    LessonInFirefoxTest() {
        super(Browser.Kind.FIREFOX);
    }
}
