package org.sagwise;

import static com.tngtech.archunit.base.DescribedPredicate.describe;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import java.util.Set;

/** What lies outside the program: files and the network, and who may open files. */
final class Outside {

    /** Who opens files: those that are given a name by a person or by the system, not by a file. */
    private static final Set<String> OPENERS = Set.of(
            "AtomicFile",
            "DrawerFile",
            "LessonFolder",
            "LessonProgress",
            "LessonSource",
            "ScenarioFiles",
            "ScenarioReader",
            "SettingsFile",
            "Unfinished",
            "Writer");

    static final DescribedPredicate<JavaClass> ARE_NO_OPENERS =
            describe("are none of the openers", it -> !OPENERS.contains(outermost(it)));

    static final DescribedPredicate<JavaClass> FILES = describe(
            "open files",
            it -> it.isEquivalentTo(java.nio.file.Files.class)
                    || it.isAssignableTo(java.io.FileInputStream.class)
                    || it.isAssignableTo(java.io.FileReader.class)
                    || it.isAssignableTo(java.io.RandomAccessFile.class)
                    || it.isAssignableTo(java.nio.channels.FileChannel.class));

    static final DescribedPredicate<JavaClass> NETWORK = describe(
            "reach the network",
            it -> it.getPackageName().startsWith("java.net")
                            && !Set.of("URL", "URI", "URISyntaxException").contains(it.getSimpleName())
                    || it.getPackageName().startsWith("javax.net")
                    || it.getPackageName().startsWith("java.rmi")
                    || it.getPackageName().startsWith("javax.naming"));

    private Outside() {}

    private static String outermost(JavaClass it) {
        String name = it.getName().substring(it.getPackageName().length() + 1);
        return name.contains("$") ? name.substring(0, name.indexOf('$')) : name;
    }
}
