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

    @Override
    public int handleExecutionException(Exception failure, CommandLine line, ParseResult parsed) {
        call.problem(call.texts().say("failed", failure.toString()));
        if (depth == OutputOptions.Depth.TRACE) {
            failure.printStackTrace(call.err());
        } else {
            call.problem(call.texts().say("failed.report"));
        }
        return ExitStatus.FAILED;
    }
}
