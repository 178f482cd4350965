package org.sagwise.cli;

import java.util.List;
import java.util.concurrent.Callable;
import org.sagwise.file.CatalogueLoader;
import org.sagwise.part.NearMiss;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Prints the catalogue, or the card of one entry. */
@Command(name = "parts", mixinStandardHelpOptions = true, versionProvider = Version.class)
final class PartsCommand implements Callable<Integer> {

    private final CallContext call;

    @Parameters(arity = "0..1", paramLabel = "ID", descriptionKey = "parts.id")
    private String id;

    @Option(names = "--json", descriptionKey = "json")
    private boolean json;

    PartsCommand(CallContext call) {
        this.call = call;
    }

    @Override
    public Integer call() {
        List<CatalogueFamily> all = CatalogueFamily.all(CatalogueLoader.builtIn());
        List<CatalogueFamily> asked =
                id == null ? all : all.stream().map(family -> family.only(id)).toList();
        if (asked.stream().allMatch(family -> family.entries().isEmpty())) {
            unknown(all);
            return ExitStatus.WRONG;
        }
        print(asked);
        return ExitStatus.DONE;
    }

    private void print(List<CatalogueFamily> asked) {
        if (json) {
            PartsJson.write(call, asked);
        } else if (id == null) {
            new PartsText(call).list(asked);
        } else {
            PartsText text = new PartsText(call);
            asked.forEach(family -> family.entries().forEach(text::card));
        }
    }

    private void unknown(List<CatalogueFamily> all) {
        call.problem(call.texts().say("wrong.unknown-entry", id));
        List<String> ids = all.stream()
                .flatMap(family -> family.entries().stream())
                .map(entry -> entry.id())
                .toList();
        List<String> near = NearMiss.of(id, ids);
        if (!near.isEmpty()) {
            call.problem(call.texts().say("wrong.meant", String.join(", ", near)));
        }
    }
}
