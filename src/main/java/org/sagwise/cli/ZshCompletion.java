package org.sagwise.cli;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** A completion script for zsh: a function for each verb, which hands on to those below it. */
final class ZshCompletion {

    private final CommandSpec program;
    private final StringBuilder out = new StringBuilder();

    ZshCompletion(CommandSpec program) {
        this.program = program;
    }

    String script() {
        out.append("#compdef ").append(program.name()).append("\n\n");
        function(program, "_" + program.name());
        out.append("compdef _")
                .append(program.name())
                .append(' ')
                .append(program.name())
                .append('\n');
        return out.toString();
    }

    private void function(CommandSpec spec, String name) {
        List<CommandSpec> verbs = spec.subcommands().values().stream()
                .map(CommandLine::getCommandSpec)
                .toList();
        out.append(name).append("() {\n  local context state state_descr line\n  typeset -A opt_args\n  _arguments -C");
        CompletedOption.of(spec).forEach(this::option);
        if (verbs.isEmpty()) {
            spec.positionalParameters().forEach(this::parameter);
            out.append("\n}\n\n");
            return;
        }
        out.append(" \\\n    '1: :->verb' \\\n    '*:: :->rest'\n  case $state in\n    verb)\n");
        out.append("      local -a verbs=(\n");
        verbs.forEach(verb -> out.append("        ")
                .append(quoted(verb.name() + ":" + CompletedOption.about(verb)))
                .append('\n'));
        out.append("      )\n      _describe verb verbs\n");
        if (!spec.positionalParameters().isEmpty()) {
            out.append("      _files\n");
        }
        out.append("      ;;\n    rest)\n      case $line[1] in\n");
        verbs.forEach(verb -> out.append("        ")
                .append(verb.name())
                .append(") ")
                .append(name)
                .append('_')
                .append(verb.name())
                .append(" ;;\n"));
        out.append("      esac\n      ;;\n  esac\n}\n\n");
        verbs.forEach(verb -> function(verb, name + "_" + verb.name()));
    }

    private void option(OptionSpec option) {
        String about = "[" + escaped(CompletedOption.about(option)) + "]";
        String all = Arrays.stream(option.names()).collect(Collectors.joining(" "));
        for (String name : option.names()) {
            String value = CompletedOption.takesValue(option) ? value(option) : "";
            boolean isLong = name.startsWith("--");
            String joined = value.isEmpty() ? "" : isLong ? "=" : "";
            out.append(" \\\n    ").append(quoted("(" + all + ")" + name + joined + about + value));
        }
    }

    private void parameter(PositionalParamSpec parameter) {
        String count = parameter.arity().max() > 1 ? "*" : "";
        out.append(" \\\n    ").append(quoted(count + value(parameter)));
    }

    private static String value(ArgSpec arg) {
        List<String> words = CompletedOption.words(arg);
        String label = arg.paramLabel().replace(":", "").replace("|", " ");
        return ":" + label + ":" + (words.isEmpty() ? "_files" : "(" + String.join(" ", words) + ")");
    }

    private static String escaped(String text) {
        return text.replace("[", "(").replace("]", ")").replace(":", "\\:");
    }

    private static String quoted(String text) {
        return "'" + text.replace("'", "'\\''") + "'";
    }
}
