package org.sagwise.cli;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;

/** What a shell can complete of the command line, taken from what the command line says about itself. */
final class CompletedOption {

    private CompletedOption() {}

    /** Options of a verb that a person may see. */
    static List<OptionSpec> of(CommandSpec spec) {
        return spec.options().stream().filter(option -> !option.hidden()).toList();
    }

    static boolean takesValue(ArgSpec arg) {
        return arg.arity().max() > 0;
    }

    /** The words that can follow; empty where a file or anything else can. */
    static List<String> words(ArgSpec arg) {
        return arg.paramLabel().contains("|")
                ? Arrays.stream(arg.paramLabel().split("\\|"))
                        .filter(word -> word.equals(word.toLowerCase(Locale.ROOT)))
                        .toList()
                : List.of();
    }

    /** What it does, on one line. */
    static String about(ArgSpec arg) {
        return String.join(" ", arg.description());
    }

    /** What a verb does, on one line. */
    static String about(CommandSpec spec) {
        return String.join(" ", spec.usageMessage().description());
    }
}
