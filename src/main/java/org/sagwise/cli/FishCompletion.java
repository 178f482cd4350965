package org.sagwise.cli;

import java.util.List;
import java.util.Map;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A completion script for fish: one line for each verb and option. */
final class FishCompletion {

    private final CommandSpec program;
    private final StringBuilder out = new StringBuilder();

    FishCompletion(CommandSpec program) {
        this.program = program;
    }

    String script() {
        options(program, "not __fish_seen_subcommand_from " + names(program));
        verbs(program, "not __fish_seen_subcommand_from " + names(program));
        for (CommandLine verb : program.subcommands().values()) {
            CommandSpec spec = verb.getCommandSpec();
            String within = "__fish_seen_subcommand_from " + spec.name();
            if (spec.subcommands().isEmpty()) {
                verb(spec, within);
                continue;
            }
            verbs(spec, within + "; and not __fish_seen_subcommand_from " + names(spec));
            for (Map.Entry<String, CommandLine> inner : spec.subcommands().entrySet()) {
                verb(inner.getValue().getCommandSpec(), within + "; and __fish_seen_subcommand_from " + inner.getKey());
            }
        }
        return out.toString();
    }

    private static String names(CommandSpec spec) {
        return String.join(" ", spec.subcommands().keySet());
    }

    private void verbs(CommandSpec spec, String condition) {
        for (Map.Entry<String, CommandLine> verb : spec.subcommands().entrySet()) {
            line(condition)
                    .append(" -a ")
                    .append(verb.getKey())
                    .append(" -d ")
                    .append(quoted(CompletedOption.about(verb.getValue().getCommandSpec())))
                    .append('\n');
        }
    }

    private void verb(CommandSpec spec, String condition) {
        options(spec, condition);
        for (PositionalParamSpec parameter : spec.positionalParameters()) {
            List<String> words = CompletedOption.words(parameter);
            if (!words.isEmpty()) {
                line(condition)
                        .append(" -f -a ")
                        .append(quoted(String.join(" ", words)))
                        .append('\n');
            }
        }
    }

    private void options(CommandSpec spec, String condition) {
        for (OptionSpec option : CompletedOption.of(spec)) {
            StringBuilder line = line(condition);
            for (String name : option.names()) {
                line.append(name.startsWith("--") ? " -l " + name.substring(2) : " -s " + name.substring(1));
            }
            if (CompletedOption.takesValue(option)) {
                List<String> words = CompletedOption.words(option);
                line.append(words.isEmpty() ? " -r" : " -x -a " + quoted(String.join(" ", words)));
            }
            line.append(" -d ").append(quoted(CompletedOption.about(option))).append('\n');
        }
    }

    private StringBuilder line(String condition) {
        return out.append("complete -c ").append(program.name()).append(" -n ").append(quoted(condition));
    }

    private static String quoted(String text) {
        return "'" + text.replace("\\", "\\\\").replace("'", "\\'") + "'";
    }
}
