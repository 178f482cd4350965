import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.tooling.ConsoleTeaVMToolLog;
import org.teavm.tooling.TeaVMProblemRenderer;
import org.teavm.tooling.TeaVMTool;
import org.teavm.tooling.TeaVMToolException;
import org.teavm.vm.TeaVMOptimizationLevel;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.tooling.ConsoleTeaVMToolLog;
import org.teavm.tooling.TeaVMProblemRenderer;
import org.teavm.tooling.TeaVMTool;
import org.teavm.vm.TeaVMOptimizationLevel;

/**
 * Compiles the script of live pages from the classes on the class path, unless it is newer than all of them.
 *
 * <p>{@code java -XX:hashCode=2 -cp CLASSES scripts/PageScript.java FOLDER/engine.js}, from the top of a checkout; the
 * profiles that want the script call it. Its own process, since the compiler gives out short names in the order of
 * identity hashes: where all of them are equal, the same classes give the same bytes.
 */
public final class PageScript {

    private PageScript() {}

    public static void main(String[] args) throws Exception {
        Path script = Path.of(args[0]).toAbsolutePath();
        List<Path> classPath = Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .map(Path::of)
                .toList();
        if (!isNewest(script, classPath)) {
            compile(script, classPath);
        }
    }

    private static boolean isNewest(Path script, List<Path> classPath) throws IOException {
        if (!Files.exists(script)) {
            return false;
        }
        FileTime written = Files.getLastModifiedTime(script);
        List<Path> sources = new ArrayList<>(classPath);
        sources.add(Path.of("scripts/PageScript.java"));
        for (Path source : sources) {
            try (Stream<Path> files = Files.walk(source)) {
                for (Path file : (Iterable<Path>) files::iterator) {
                    if (Files.isRegularFile(file) && Files.getLastModifiedTime(file).compareTo(written) >= 0) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private static void compile(Path script, List<Path> classPath) throws TeaVMToolException, IOException {
        var log = new ConsoleTeaVMToolLog(false);
        var tool = new TeaVMTool();
        tool.setLog(log);
        tool.setClassLoader(ClassLoader.getSystemClassLoader());
        tool.setClassPath(classPath.stream().map(Path::toFile).toList());
        tool.setMainClass("org.sagwise.web.page.LivePage");
        tool.setTargetDirectory(script.getParent().toFile());
        tool.setTargetFileName(script.getFileName().toString());
        tool.setJsModuleType(JSModuleType.NONE);
        tool.setObfuscated(true);
        tool.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        tool.setAssertionsRemoved(true);
        tool.getProperties().setProperty("java.util.Locale.available", "en, de");
        tool.generate();
        var problems = tool.getProblemProvider();
        TeaVMProblemRenderer.describeProblems(tool.getDependencyInfo().getCallGraph(), problems, log);
        if (!problems.getSevereProblems().isEmpty()) {
            Files.deleteIfExists(script);
            System.exit(1);
        }
    }
}
