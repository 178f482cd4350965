package org.sagwise.cli;

import java.io.InputStream;
import java.io.PrintWriter;
import java.io.Writer;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.function.IntSupplier;
import org.sagwise.text.Languages;
import org.sagwise.text.Signs;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.RunLast;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The command line: what stands behind {@code sagwise}, with its verbs as sub-commands. */
@Command(
        name = "sagwise",
        customSynopsis = {"sagwise [FILE]", "       sagwise VERB [ARGUMENT...]"},
        mixinStandardHelpOptions = true,
        versionProvider = Version.class)
public final class SagwiseCommand implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "FILE", descriptionKey = "file.open")
    private String file;

    /** For the help alone, like {@code --trace}: {@link OutputOptions} has read both ahead. */
    @Option(names = "--ascii", scope = ScopeType.INHERIT, descriptionKey = "ascii")
    private boolean ascii;

    @Option(names = "--no-color", scope = ScopeType.INHERIT, descriptionKey = "no-color")
    private boolean colourless;

    @Option(names = "--trace", scope = ScopeType.INHERIT, descriptionKey = "trace")
    private boolean trace;

    private SagwiseCommand(CallContext call) {
        this.call = call;
    }

    /**
     * Carries out one call of the program.
     *
     * @param args what stood behind the program's name
     * @param opener opens the window, where one is asked for
     * @param out takes results; flushed
     * @param err takes problems; flushed
     * @param in where {@code -} reads from
     * @return the exit status: 0 done, 1 done and grave cautions found, 2 input or call wrong, 3
     *     the program itself failed
     */
    public static int run(String[] args, WindowOpener opener, PrintWriter out, PrintWriter err, InputStream in) {
        OutputOptions manner = OutputOptions.of(args);
        CallContext call = new CallContext(
                fit(out, manner.signs()),
                fit(err, manner.signs()),
                in,
                opener,
                manner.asked(),
                manner.locale(),
                manner.signs(),
                manner.ink());
        int status = executed(() -> carriedOut(args, call, manner), call, manner);
        boolean lost = call.out().checkError();
        if (lost) {
            call.problem(call.texts().say("wrong.lost"));
        }
        call.err().flush();
        return lost ? ExitStatus.FAILED : status;
    }

    /** Trouble of the machine itself, such as a full temporary folder in which no library can be unpacked. */
    private static int executed(IntSupplier work, CallContext call, OutputOptions manner) {
        try {
            return work.getAsInt();
        } catch (LinkageError | InternalError failure) {
            Optional<String> why = TemporaryFolder.trouble(call.texts());
            if (why.isPresent()) {
                call.problem(why.get());
                return ExitStatus.WRONG;
            }
            return new Failure(call, manner.depth()).own(failure);
        } catch (OutOfMemoryError failure) {
            call.problem(call.texts().say("failed.memory"));
            return ExitStatus.FAILED;
        }
    }

    /** A window that is asked for without more ado comes up without all verbs being built for it. */
    private static int carriedOut(String[] args, CallContext call, OutputOptions manner) {
        Optional<PlainOpening> plain = PlainOpening.of(args);
        if (plain.isEmpty()) {
            return line(call, manner).execute(args);
        }
        try {
            return new Opening(call).open(plain.get().file().orElse(null), Set.of());
        } catch (RuntimeException failure) {
            return new Failure(call, manner.depth()).own(failure);
        }
    }

    private static PrintWriter fit(PrintWriter target, Signs signs) {
        return signs == Signs.ASCII ? new PrintWriter(new AsciiWriter(target)) : target;
    }

    private static CommandLine line(CallContext call, OutputOptions manner) {
        CommandLine line = new CommandLine(new SagwiseCommand(call))
                .addSubcommand(new OpenCommand(call))
                .addSubcommand(new ReadingsCommand(call))
                .addSubcommand(new CheckCommand(call))
                .addSubcommand(new RunCommand(call))
                .addSubcommand(new CompareCommand(call))
                .addSubcommand(new PictureCommand(call))
                .addSubcommand(new ExplainCommand(call))
                .addSubcommand(new PageCommand(call))
                .addSubcommand(new ShareCommand(call))
                .addSubcommand(new UnshareCommand(call))
                .addSubcommand(new NewCommand(call))
                .addSubcommand(new WordsCommand(call))
                .addSubcommand(new MeasuredCommand(call))
                .addSubcommand(new PlanCommand(call))
                .addSubcommand(new WindCommand(call))
                .addSubcommand(new VaryCommand(call))
                .addSubcommand(new PartsCommand(call))
                .addSubcommand(DrawerCommand.line(call))
                .addSubcommand(LessonCommand.line(call))
                .addSubcommand(new CompletionCommand(call))
                .addSubcommand(new HelpCommand(call))
                .addSubcommand(new VersionCommand(call));
        return line.setResourceBundle(help(call.locale()))
                .setOut(call.out())
                .setErr(call.err())
                .setExecutionStrategy(parsed -> patiently(parsed, call))
                .setParameterExceptionHandler(new WrongCall(call))
                .setExecutionExceptionHandler(new Failure(call, manner.depth()));
    }

    /** A window stays for as long as somebody wants it; everything else comes to its end. */
    private static int patiently(ParseResult parsed, CallContext call) {
        RunLast strategy = new RunLast();
        if (!parsed.hasSubcommand() || parsed.subcommand().commandSpec().userObject() instanceof OpenCommand) {
            return strategy.execute(parsed);
        }
        try {
            return Patience.within(Patience.USUAL, () -> strategy.execute(parsed));
        } catch (Patience.RunOut tooLong) {
            call.problem(call.texts().say("failed.time", Patience.USUAL.toMinutes()));
            return ExitStatus.FAILED;
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            return ExitStatus.FAILED;
        } catch (ExecutionException failure) {
            if (failure.getCause() instanceof Error error) {
                throw error;
            }
            if (failure.getCause() instanceof RuntimeException unexpected) {
                throw unexpected;
            }
            throw new IllegalStateException(failure.getCause());
        }
    }

    /** What the command line says about itself in a language. */
    static CommandSpec spec(Locale locale) {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        CallContext call = new CallContext(
                nowhere,
                nowhere,
                InputStream.nullInputStream(),
                new NoWindow(),
                Optional.of(locale),
                locale,
                Signs.PRINT,
                Ink.PLAIN);
        return line(call, new OutputOptions(Optional.of(locale), Signs.PRINT, OutputOptions.Depth.MESSAGE, Ink.PLAIN))
                .getCommandSpec();
    }

    private static ResourceBundle help(Locale locale) {
        return ResourceBundle.getBundle(
                "org.sagwise.texts.cli",
                locale,
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    @Option(names = "--lang", paramLabel = "en|de", scope = ScopeType.INHERIT, descriptionKey = "lang")
    private void setLanguage(String language) {
        if (!Languages.all().contains(language)) {
            throw new ParameterException(
                    spec.commandLine(),
                    call.texts().say("wrong.value", OutputOptions.LANG, language, String.join(", ", Languages.all())));
        }
    }

    @Override
    public Integer call() {
        return new Opening(call).open(file, spec.subcommands().keySet());
    }
}
