package org.sagwise;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;
import org.junit.platform.commons.support.AnnotationSupport;
import org.junit.platform.commons.support.HierarchyTraversalMode;
import org.junit.platform.commons.support.ReflectionSupport;

/** The build runs test classes by their names: one that is named otherwise would never be run. */
class TestNamesTest {

    private static final String NAMES = "[^$]*(Test|Properties|Fuzz)(\\$.*)?";

    @Test
    void tests_theirClasses_areNamedAsTheBuildExpects() throws URISyntaxException {
        URI here = TestNamesTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .toURI();
        List<Class<?>> tests = ReflectionSupport.findAllClassesInClasspathRoot(
                here, TestNamesTest::declaresTests, name -> name.startsWith(Rooms.ROOT + "."));
        var misnamed = new TreeSet<String>();
        tests.stream().map(Class::getName).filter(name -> !name.matches(NAMES)).forEach(misnamed::add);

        assertTrue(tests.contains(TestNamesTest.class), "classes are found at all");
        assertEquals(new TreeSet<String>(), misnamed, "pom.xml includes no such names");
    }

    private static boolean declaresTests(Class<?> type) {
        return AnnotationSupport.findAnnotatedMethods(type, Testable.class, HierarchyTraversalMode.TOP_DOWN).stream()
                .anyMatch(method -> method.getDeclaringClass() == type);
    }
}
