package org.sagwise.web;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** What becomes of the compiler's script before it stands in a page. */
class EngineScriptTest {

    private static final String FILES = "var r={\"org/sagwise/texts/languages.txt\":\"YQ==\"};";

    private static String packed(String script) {
        String whole = EngineScript.of((FILES + script).getBytes(StandardCharsets.UTF_8), false);
        return whole.substring(whole.indexOf("var r=sagwiseFiles;") + "var r=sagwiseFiles;".length());
    }

    @Test
    void of_whatTheCompilerKnowsOfTheWorld_isLeftOut() {
        assertEquals(
                "a={\"de\":{}};b=[];c={};d={\"de\":{\"timeZones\":{\"Asia\":{}}}};e={};",
                packed(
                        "a={\"de\":{\"UGS\":{\"name\":\"Schilling (1966)\",\"symbol\":\"UGS\"}\n,\"FJD\":\n{\"name\":\"Dollar\","
                                + "\"symbol\":\"$\"}}};b=[{\"code\":\"AFN\",\"numericCode\":971,\"fractionDigits\":2}];"
                                + "c={\"AF\":{\"value\":\"AFN\"},\"AL\":{\"value\":\"ALL\"}};d={\"de\":{\"timeZones\":{\"Asia\":"
                                + "{\"Gaza\":{\"value\":\"Gaza\"},\"Hong_Kong\":{\"value\":\"Hongkong\"}}}}};"
                                + "e={\"aa\":{\"value\":\"aa-Latn-ET\"},\"und-PK\":{\"value\":\"ur-Arab-PK\"}};"));
    }

    @Test
    void of_howNumbersAreWritten_stays() {
        String numbers =
                "n={\"de\":{\"value\":\"#,##0.###\"},\"root\":{\"value\":\"#,##0.###\"},\"en-US\":{\"value\":\"#0\"}};"
                        + "d={\"de\":{\"decimalSeparator\":44,\"naN\":\"NaN\"}};w={\"en\":[{\"value\":\"Sunday\"}]};";

        assertEquals(numbers, packed(numbers));
    }

    @Test
    void of_anotherScript_isRefused() {
        byte[] other = "alert(1)".getBytes(StandardCharsets.UTF_8);

        assertThrows(IllegalArgumentException.class, () -> EngineScript.of(other, true));
    }
}
