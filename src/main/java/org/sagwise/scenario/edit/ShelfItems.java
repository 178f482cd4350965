package org.sagwise.scenario.edit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.sagwise.part.Catalogue;
import org.sagwise.part.KindDescriptor;
import org.sagwise.part.PartKind;
import org.sagwise.part.PartModel;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;

/** Everything that can be taken from the shelf: what the catalogue has, and plain bench gear. */
public final class ShelfItems {

    private ShelfItems() {}

    /** All of them, family by family, in the order of the catalogue; then what stands in none. */
    public static List<ShelfItem> of(Catalogue catalogue) {
        return Stream.concat(
                        Stream.of(PartKind.values())
                                .flatMap(kind -> catalogue.models(kind).all().stream())
                                .map(ShelfItems::listed),
                        Stream.of(PartKind.values())
                                .filter(kind -> kind.descriptor().family().isEmpty())
                                .map(ShelfItems::plain))
                .toList();
    }

    private static ShelfItem plain(PartKind kind) {
        return new ShelfItem(kind.word(), part(kind, Keys.NONE), Optional.empty());
    }

    /** A model is named; of what has no models, a copy is taken. */
    private static ShelfItem listed(PartModel entry) {
        KindDescriptor kind = entry.kind().descriptor();
        Keys keys = kind.isModelled() ? Keys.of("model", entry.id()) : entry.keys();
        return new ShelfItem(entry.id(), part(entry.kind(), keys), Optional.of(entry.card()));
    }

    private static Part part(PartKind kind, Keys keys) {
        KindDescriptor descriptor = kind.descriptor();
        Part part = Part.of(kind.idStem(), kind);
        for (Keys some : List.of(keys, descriptor.fresh())) {
            for (Map.Entry<String, Object> entry : some.values().entrySet()) {
                part = part.with(entry.getKey(), entry.getValue());
            }
        }
        return part;
    }
}
