package org.sagwise.web;

/** Live pages in chromium, 390 by 844, by touch. */
final class ChromiumPhoneTest extends InBrowserTest {

    ChromiumPhoneTest() {
        super(Browser.Kind.CHROMIUM, 390, 844, "touch");
    }
}
