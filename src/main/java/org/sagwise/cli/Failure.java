package org.sagwise.cli;

import picocli.CommandLine;
import picocli.CommandLine.IExecutionExceptionHandler;
import picocli.CommandLine.ParseResult;

/** Owns up to a fault of the program itself. */
final class Failure implements IExecutionExceptionHandler {

    private final CallContext call;
    private final Manner.Depth depth;

    Failure(CallContext call, Manner.Depth depth) {
        this.call = call;
        this.depth = depth;
    }

    @Override
    public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) {
        call.problem(call.texts().say("failed", failure.toString()));
        if (depth == Manner.Depth.TRACE) {
            failure.printStackTrace(call.err());
        } else {
            call.problem(call.texts().say("failed.report"));
        }
        return ExitStatus.FAILED;
    }
}
