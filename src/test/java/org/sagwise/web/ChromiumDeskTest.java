package org.sagwise.web;

/** Live pages in chromium, 1280 by 720, by mouse. */
final class ChromiumDeskTest extends InBrowserTest {

    ChromiumDeskTest() {
        super(Browser.Kind.CHROMIUM, 1280, 720, "mouse");
    }
}
