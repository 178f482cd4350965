package org.sagwise.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

class ManPageTest {

    private static final List<String> MACROS =
            List.of(".TH", ".SH", ".SS", ".PP", ".TP", ".B", ".IP", ".EX", ".EE", "'\\\"");

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void of_eachLanguage_namesEveryVerbAndOption(String language) {
        Locale locale = Locale.forLanguageTag(language);
        String page = ManPage.of(locale, "1.2.3");
        expect(page, "sagwise", SagwiseCommand.spec(locale));
        assertTrue(page.contains("Sagwise 1.2.3"));
    }

    private static void expect(String page, String name, CommandSpec spec) {
        for (OptionSpec option : spec.options()) {
            for (String each : option.names()) {
                assertTrue(page.contains(each.replace("-", "\\-")), name + " " + each);
            }
        }
        for (String line : spec.usageMessage().description()) {
            assertTrue(page.contains(line.replace("-", "\\-")), line);
        }
        for (CommandLine verb : spec.subcommands().values()) {
            String full = name + " " + verb.getCommandName();
            assertTrue(page.contains(".SS \"" + full + "\""), full);
            expect(page, full, verb.getCommandSpec());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void of_eachLanguage_hasExamplesAsTheyAreTyped(String language) {
        String page = ManPage.of(Locale.forLanguageTag(language), "1");
        assertTrue(page.contains("C at 30 %; coil 0.2"), page);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "de"})
    void of_eachLanguage_holdsNoLineThatIsTakenForAnotherMacro(String language) {
        for (String line : ManPage.of(Locale.forLanguageTag(language), "1").split("\n")) {
            boolean request = line.startsWith(".") || line.startsWith("'");
            assertTrue(!request || MACROS.contains(line.split(" ")[0]), line);
        }
    }

    @Test
    void of_otherLanguage_isAnotherPageWithTheSameVerbs() {
        String english = ManPage.of(Locale.ENGLISH, "1");
        String german = ManPage.of(Locale.GERMAN, "1");
        assertFalse(english.equals(german));
        assertEquals(count(english, ".SS "), count(german, ".SS "));
        assertEquals(count(english, ".TP"), count(german, ".TP"));
    }

    private static long count(String page, String macro) {
        return page.lines().filter(line -> line.startsWith(macro)).count();
    }
}
