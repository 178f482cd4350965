package org.sagwise.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A verb that does nothing without another behind it, and says which there are. */
abstract class NeedsSubverb implements Callable<Integer> {

    private final CallContext call;

    @Spec
    private CommandSpec spec;

    NeedsSubverb(CallContext call) {
        this.call = call;
    }

    @Override
    public final Integer call() {
        throw new ParameterException(
                spec.commandLine(),
                call.texts()
                        .say(
                                "wrong.missing",
                                String.join("|", spec.subcommands().keySet())));
    }
}
