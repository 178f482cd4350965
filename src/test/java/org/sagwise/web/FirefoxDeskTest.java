package org.sagwise.web;

/** Live pages in firefox, 1920 by 1080, by mouse. */
final class FirefoxDeskTest extends InBrowserTest {

    FirefoxDeskTest() {
        super(Browser.Kind.FIREFOX, 1920, 1080, "mouse");
    }
}
