package org.sagwise.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The scenario that a call is about: a file by its name, or a line of words. */
final class GivenFile {

    static final String OF = "--of";

    @Spec(Spec.Target.MIXEE)
    private CommandSpec verb;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file")
    private String file;

    @Option(names = OF, paramLabel = "WORDS", descriptionKey = "of")
    private String words;

    /** Reads it; whatever is wrong with it is told in words. */
    GivenScenario read(CallContext call) {
        if ((file == null) == (words == null)) {
            String key = file == null ? "wrong.no-scenario" : "wrong.one-of";
            throw new ParameterException(verb.commandLine(), call.texts().say(key, "FILE, " + OF));
        }
        ScenarioInput input = new ScenarioInput(call);
        return file == null ? input.readWords(words) : input.read(file);
    }

    /** Whether the call names one at all. */
    boolean isNamed() {
        return file != null || words != null;
    }

    /** As the call names it. */
    String name() {
        return file == null ? OF : file;
    }
}
