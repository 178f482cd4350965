package org.sagwise.ui;

import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import org.junit.jupiter.api.Test;

/** Holds the features of the window apart. */
class FeaturesTest {

    @Test
    void features_ofTheWindow_haveNoCycles() {
        slices().matching("org.sagwise.ui.(*)..")
                .should()
                .beFreeOfCycles()
                .because("a feature is a folder that can be read, and thrown away, by itself")
                .check(window());
    }

    @Test
    void models_ofTheWindow_knowNoScreen() {
        ArchRuleDefinition.noClasses()
                .that()
                .resideInAnyPackage("org.sagwise.ui.model..", "org.sagwise.ui.prefs..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("javafx.scene..", "javafx.stage..")
                .because("what the window knows can be tested without one")
                .check(window());
    }

    private static JavaClasses window() {
        return new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("org.sagwise.ui");
    }
}
