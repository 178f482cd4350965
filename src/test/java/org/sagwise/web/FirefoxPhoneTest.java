package org.sagwise.web;

/** Live pages in firefox, as narrow as it goes, by touch. */
final class FirefoxPhoneTest extends InBrowserTest {

    FirefoxPhoneTest() {
        super(Browser.Kind.FIREFOX, 390, 844, "touch");
    }
}
