package org.sagwise;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.methods;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;
import org.junit.platform.commons.annotation.Testable;

/** The build runs test classes by their names: one that is named otherwise would never be run. */
class TestNamesTest {

    @Test
    void tests_theirClasses_areNamedAsTheBuildExpects() {
        methods()
                .that()
                .areMetaAnnotatedWith(Testable.class)
                .should()
                .beDeclaredInClassesThat()
                .haveNameMatching(".*(Test|Properties|Fuzz)(\\$.*)?")
                .because("pom.xml includes these names and no other")
                .check(new ClassFileImporter()
                        .withImportOption(place -> place.contains("test"))
                        .importPackages(Rooms.ROOT));
    }
}
