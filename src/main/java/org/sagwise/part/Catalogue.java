package org.sagwise.part;

import java.util.EnumMap;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;

/** All generic parts the program knows by an id. */
public final class Catalogue {

    private final Entries<ChemistryCard> chemistries;
    private final Entries<Alloy> alloys;
    private final Entries<ContactSpec> contacts;
    private final Entries<JumperSpec> jumpers;
    private final Map<PartKind, Entries<PartModel>> models = new EnumMap<>(PartKind.class);

    /**
     * @param chemistries kinds of cell
     * @param alloys metals for coils
     * @param contacts kinds of contact
     * @param jumpers ready-made jumpers
     * @param models models, or ready-made parts, of a kind that has a family in the catalogue
     */
    public Catalogue(
            Entries<ChemistryCard> chemistries,
            Entries<Alloy> alloys,
            Entries<ContactSpec> contacts,
            Entries<JumperSpec> jumpers,
            Function<PartKind, Entries<PartModel>> models) {
        this.chemistries = chemistries;
        this.alloys = alloys;
        this.contacts = contacts;
        this.jumpers = jumpers;
        Stream.of(PartKind.values())
                .filter(kind -> kind.descriptor().family().isPresent())
                .forEach(kind -> this.models.put(kind, models.apply(kind)));
    }

    /** Kinds of cell. */
    public Entries<ChemistryCard> chemistries() {
        return chemistries;
    }

    /** Metals for coils. */
    public Entries<Alloy> alloys() {
        return alloys;
    }

    /** Kinds of contact. */
    public Entries<ContactSpec> contacts() {
        return contacts;
    }

    /** Ready-made jumpers. */
    public Entries<JumperSpec> jumpers() {
        return jumpers;
    }

    /** Models, or ready-made parts, of a kind; none for bench gear that is all the same. */
    public Entries<PartModel> models(PartKind kind) {
        return models.getOrDefault(kind, Entries.none());
    }
}
