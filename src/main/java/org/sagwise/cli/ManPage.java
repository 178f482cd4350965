package org.sagwise.cli;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.sagwise.text.Texts;
import picocli.CommandLine;
import picocli.CommandLine.Help;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The manual page, made from what the command line says about itself, so that it cannot fall
 * behind. Written in the macros of man(7).
 */
public final class ManPage {

    private final Locale locale;
    private final Texts texts;
    private final Roff roff = new Roff();

    private ManPage(Locale locale) {
        this.locale = locale;
        this.texts = Texts.in("man", locale);
    }

    /** The page in a language, for section 1 of the manual. */
    public static String of(Locale locale, String version) {
        return new ManPage(locale).page(version);
    }

    private String page(String version) {
        CommandSpec spec = SagwiseCommand.spec(locale);
        roff.head("SAGWISE", "1", "Sagwise " + version, texts.say("title"));
        roff.section(texts.say("name"));
        roff.line("sagwise - " + texts.say("name.is"));
        roff.section(texts.say("synopsis"));
        synopsis(spec);
        roff.section(texts.say("description"));
        for (String line : spec.usageMessage().description()) {
            roff.paragraph(line);
        }
        arguments(spec);
        roff.section(texts.say("options"));
        spec.options().forEach(option -> entry(names(option), option));
        roff.section(texts.say("verbs"));
        spec.subcommands().forEach((name, line) -> verb("sagwise " + name, line));
        status(spec);
        files();
        examples();
        roff.section(texts.say("notice"));
        roff.paragraph(Texts.in("notices", locale).say("export.line"));
        return roff.text();
    }

    private void arguments(CommandSpec spec) {
        roff.section(texts.say("arguments"));
        spec.positionalParameters().forEach(each -> entry(each.paramLabel(), each));
    }

    private void verb(String name, CommandLine line) {
        CommandSpec spec = line.getCommandSpec();
        if (spec.usageMessage().hidden()) {
            return;
        }
        roff.heading(name);
        synopsis(spec);
        for (String text : spec.usageMessage().description()) {
            roff.paragraph(text);
        }
        for (PositionalParamSpec each : spec.positionalParameters()) {
            entry(each.paramLabel(), each);
        }
        for (OptionSpec option : spec.options()) {
            if (!option.inherited() && !isHelp(option)) {
                entry(names(option), option);
            }
        }
        for (String example : spec.usageMessage().footer()) {
            // As picocli prints it, which takes it for a format.
            roff.code(String.format(example).strip());
        }
        for (Map.Entry<String, CommandLine> inner : spec.subcommands().entrySet()) {
            verb(name + " " + inner.getKey(), inner.getValue());
        }
    }

    private static boolean isHelp(OptionSpec option) {
        return option.usageHelp() || option.versionHelp();
    }

    private void synopsis(CommandSpec spec) {
        String words = new Help(spec, Help.defaultColorScheme(Help.Ansi.OFF)).synopsis(0);
        if (spec.usageMessage().customSynopsis().length == 0) {
            roff.line(String.join(" ", words.strip().split("\\s+")));
            return;
        }
        for (String line : spec.usageMessage().customSynopsis()) {
            roff.paragraph(line.strip());
        }
    }

    private void entry(String term, ArgSpec arg) {
        if (!arg.hidden()) {
            roff.entry(term, String.join(" ", arg.description()));
        }
    }

    private static String names(OptionSpec option) {
        Collection<String> names = new LinkedHashSet<>(List.of(option.names()));
        String label = option.arity().max() > 0 ? "=" + option.paramLabel() : "";
        boolean isShort = !option.longestName().startsWith("--");
        return String.join(", ", names) + (isShort ? label.replace('=', ' ') : label);
    }

    private void status(CommandSpec spec) {
        roff.section(texts.say("status"));
        spec.usageMessage().exitCodeList().forEach(roff::entry);
    }

    private void files() {
        roff.section(texts.say("files"));
        roff.entry("*.sagwise.json", texts.say("files.scenario"));
    }

    private void examples() {
        roff.section(texts.say("examples"));
        example("readings", "sagwise readings bench.sagwise.json");
        example("check", "sagwise check bench.sagwise.json");
        example("picture", "sagwise picture --schematic -o bench.png bench.sagwise.json");
    }

    private void example(String key, String call) {
        roff.paragraph(texts.say("examples." + key));
        roff.code(call);
    }
}
