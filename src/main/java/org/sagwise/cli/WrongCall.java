package org.sagwise.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.sagwise.part.NearMiss;
import org.sagwise.text.Texts;
import picocli.CommandLine;
import picocli.CommandLine.IParameterExceptionHandler;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Says in words what is wrong with a call. */
final class WrongCall implements IParameterExceptionHandler {

    private final CallContext call;
    private final Texts texts;

    WrongCall(CallContext call) {
        this.call = call;
        this.texts = call.texts();
    }

    @Override
    public int handleParseException(ParameterException wrong, String[] args) {
        call.problem(words(wrong));
        call.problem(
                texts.say("wrong.help", wrong.getCommandLine().getCommandSpec().qualifiedName()));
        return ExitStatus.WRONG;
    }

    private String words(ParameterException wrong) {
        if (wrong instanceof UnmatchedArgumentException unmatched) {
            return unmatched(unmatched);
        }
        if (wrong instanceof MutuallyExclusiveArgsException) {
            return texts.say("wrong.one-of", "--fired, --rest");
        }
        if (wrong instanceof MissingParameterException missing) {
            return texts.say(
                    "wrong.missing",
                    missing.getMissing().stream()
                            .map(it ->
                                    it.isOption() ? ((CommandLine.Model.OptionSpec) it).longestName() : it.paramLabel())
                            .collect(Collectors.joining(", ")));
        }
        return wrong.getMessage();
    }

    private String unmatched(UnmatchedArgumentException wrong) {
        String first = wrong.getUnmatched().get(0);
        if (first.startsWith("-")) {
            return texts.say("wrong.unknown-option", first)
                    + meantOption(first, wrong.getCommandLine())
                            .map(option -> " " + texts.say("wrong.meant-option", option))
                            .orElse("");
        }
        return meantVerb(wrong.getCommandLine()).orElseGet(() -> texts.say("wrong.too-much", first));
    }

    private static Optional<String> meantOption(String word, CommandLine line) {
        String name = word.replaceFirst("=.*", "").replaceFirst("^-+", "");
        Map<String, String> known = new LinkedHashMap<>();
        line.getCommandSpec().optionsMap().keySet().stream()
                .filter(option -> option.startsWith("--"))
                .forEach(option -> known.put(option.substring(2), option));
        return NearMiss.of(name, known.keySet()).stream().findFirst().map(known::get);
    }

    /** A slip in a verb makes the verb a file name, and the file name one word too many. */
    private Optional<String> meantVerb(CommandLine line) {
        List<String> given = line.getParseResult().originalArgs();
        return given.stream()
                .findFirst()
                .flatMap(word -> suggestion(word, line))
                .or(() -> given.stream()
                        .filter(word -> !word.startsWith("-"))
                        .skip(1)
                        .findFirst()
                        .filter(word -> !line.getSubcommands().isEmpty() && line.getParent() != null)
                        .flatMap(word -> suggestion(word, line)));
    }

    private Optional<String> suggestion(String word, CommandLine line) {
        return NearMiss.of(word, line.getSubcommands().keySet()).stream()
                .findFirst()
                .filter(verb -> !verb.equals(word))
                .map(verb -> texts.say("wrong.no-such-verb", word, verb));
    }
}
