package org.sagwise;

import static com.tngtech.archunit.base.DescribedPredicate.not;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.junit.jupiter.api.Assertions.assertEquals;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Holds the rooms of the program apart: who may use whom, and who may use which library. */
class ArchitectureTest {

    private static final JavaClasses PROGRAM = new ClassFileImporter()
            .withImportOption(location -> !location.contains(testFolder()))
            .importPackages(Rooms.ROOT);

    private static final List<Library> LIBRARIES = List.of(
            new Library(
                    "javafx..",
                    List.of("ui", "app"),
                    "a verb of the command line must start fast and without a display"),
            new Library("org.controlsfx..", List.of("ui"), "controls belong to the window alone"),
            new Library(
                    "java.awt..",
                    List.of("report", "ui"),
                    "the model has no looks, and what is painted must stand on no surface: a browser has no AWT"),
            new Library("javax.imageio..", List.of("report"), "one room knows the formats of files"),
            new Library(
                    "com.fasterxml.jackson..",
                    List.of("file", "cli", "report"),
                    "the model must not depend on how it is written down"),
            new Library("org.yaml..", List.of("file"), "the model must not depend on how it is written down"),
            new Library(
                    "org.apache.commons.math3..",
                    List.of("network", "part", "run", "plan"),
                    "numerical methods belong where the physics is, not where it is shown"),
            new Library("picocli..", List.of("cli"), "only the command line knows how arguments are written"),
            new Library("de.rototor..", List.of("report"), "one room knows the formats of files"),
            new Library("org.jgrapht..", List.of("plan"), "which cells belong together is a question of the plan"),
            new Library("org.teavm..", List.of("web"), "what a browser needs is no part of the program elsewhere"),
            new Library("com.google.zxing..", List.of("report"), "a code is one more kind of picture"),
            new Library(
                    "javafx.scene.web..",
                    List.of(),
                    "a browser engine in a bench costs size and start-up and opens a door" + " to the network"));

    @Test
    void program_itsPackages_areTheRooms() {
        var found = new TreeSet<String>();
        for (JavaClass each : PROGRAM) {
            found.add(Rooms.roomOf(each.getPackageName()));
        }
        found.removeAll(Rooms.all());

        assertEquals(new TreeSet<String>(), found, "packages that the table of rooms lacks");
    }

    static Collection<String> rooms() {
        return Rooms.all();
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void room_itsUseOfOtherRooms_staysWithinItsRow(String room) {
        var forbidden = new ArrayList<>(Rooms.all());
        forbidden.remove(room);
        forbidden.removeAll(Rooms.withinReachOf(room));

        check(noClasses()
                .that()
                .resideInAPackage(Rooms.pattern(room))
                .should()
                .dependOnClassesThat(resideInAnyPackage(Rooms.patterns(forbidden)))
                .because("data flows one way, from scenario to screen; "
                        + room
                        + " may use only "
                        + Rooms.withinReachOf(room)));
    }

    @Test
    void program_itsRooms_haveNoCycles() {
        check(slices().matching(Rooms.ROOT + ".(*)..")
                .should()
                .beFreeOfCycles()
                .because("two rooms that use each other are one room with a wall in it"));
    }

    @Test
    void program_itsPackages_haveNoCycles() {
        check(slices().assignedFrom(PackageSlices.EACH)
                .should()
                .beFreeOfCycles()
                .because("a package is a folder that can be read, and thrown away, by itself"));
    }

    @Test
    void window_itsModels_knowNoScreen() {
        check(noClasses()
                .that()
                .resideInAnyPackage("org.sagwise.ui.model..", "org.sagwise.ui.prefs..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("javafx.scene..", "javafx.stage.."))
                .because("what the window knows can be tested without one"));
    }

    @Test
    void files_outsideTheWindowAndTheCommandLine_areOpenedByFewAlone() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages(Rooms.patterns(List.of("ui", "cli", "app")))
                .and(Outside.ARE_NO_OPENERS)
                .should()
                .dependOnClassesThat(Outside.FILES)
                .because("what stands in a document must not name what is read next"));
    }

    @Test
    void network_isReachedByNobody() {
        check(noClasses()
                .should()
                .dependOnClassesThat(Outside.NETWORK)
                .orShould()
                .callMethod(java.net.URL.class, "openStream")
                .orShould()
                .callMethod(java.net.URL.class, "openConnection")
                .orShould()
                .callMethod(java.net.URL.class, "getContent")
                .because("a file from a stranger must not tell anybody that it was opened"));
    }

    @ParameterizedTest
    @FieldSource("LIBRARIES")
    void library_itsUse_staysInItsRooms(Library library) {
        check(noClasses()
                .that(not(resideInAnyPackage(Rooms.patterns(library.rooms()))))
                .should()
                .dependOnClassesThat(resideInAPackage(library.pattern()))
                .because(library.reason()));
    }

    @Test
    void commandLine_whateverItReaches_isFreeOfJavaFx() {
        check(noClasses()
                .that()
                .resideInAPackage(Rooms.pattern("cli"))
                .should()
                .transitivelyDependOnClassesThat(resideInAPackage("javafx.."))
                .because("a verb must run on a machine without a display"));
    }

    @Test
    void standardStreams_outsideCommandLineAndLauncher_areUntouched() {
        check(noClasses()
                .that()
                .resideOutsideOfPackages(Rooms.patterns(List.of("cli", "app")))
                .should(ACCESS_STANDARD_STREAMS)
                .because("what a room finds is a value, shown by whoever asked"));
    }

    @Test
    void pureRooms_chanceAndClock_areHandedIn() {
        check(noClasses()
                .that()
                .resideInAnyPackage(Rooms.patterns(Rooms.PURE))
                .should(ChanceAndClock.reachForOne())
                .because("the same scenario must give the same answer, today and in ten" + " years"));
    }

    @Test
    void staticFields_everywhere_areFinal() {
        check(fields().that()
                .areStatic()
                .should()
                .beFinal()
                .because("two documents, windows or tests must not meet in a global"));
    }

    @Test
    void main_theLauncher_isNoJavaFxApplication() {
        check(classes()
                .that()
                .haveFullyQualifiedName(Rooms.ROOT + ".app.Main")
                .should()
                .notBeAssignableTo("javafx.application.Application")
                .because("the JVM refuses to start an Application from the class path, and a" + " verb needs none"));
    }

    /** Where this class was compiled to, whichever tool compiled it: the tests are no room. */
    private static String testFolder() {
        return ArchitectureTest.class
                .getProtectionDomain()
                .getCodeSource()
                .getLocation()
                .getPath();
    }

    /** Checks a rule; while a room is still empty, a rule about it has nothing to say. */
    private static void check(ArchRule rule) {
        rule.allowEmptyShould(true).check(PROGRAM);
    }

    /** A library, the rooms that may use it, and why no other room may. */
    record Library(String pattern, List<String> rooms, String reason) {

        @Override
        public String toString() {
            return pattern + rooms.stream().collect(Collectors.joining(", ", " only in [", "]"));
        }
    }
}
