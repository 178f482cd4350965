package org.sagwise.cli;

import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Owns up to a fault of the program itself. */
final class Failure implements IExecutionExceptionHandler {

    private final CallContext call;
    private final OutputOptions.Depth depth;

    Failure(CallContext call, OutputOptions.Depth depth) {
        this.call = call;
        this.depth = depth;
    }

    /** Owns up to trouble that no exception tells. */
    int own(Throwable failure) {
        call.problem(call.texts().say("failed", failure.toString()));
        if (depth == OutputOptions.Depth.TRACE) {
            failure.printStackTrace(call.err());
        } else {
            call.problem(call.texts().say("failed.report"));
        }
        return ExitStatus.FAILED;
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) {
        return own(failure);
    }
}
