package org.sagwise.part;

/**
 * All generic parts the program knows by an id.
 *
 * @param chemistries kinds of cell
 * @param cells models of cell
 * @param alloys metals for coils
 * @param coils ready-made coils
 * @param contacts kinds of contact
 * @param jumpers ready-made jumpers
 * @param switches kinds of switch
 * @param fuses fuses
 * @param boards regulated boards
 * @param chargers chargers
 */
public record Catalogue(
        Entries<ChemistryCard> chemistries,
        Entries<CellSpec> cells,
        Entries<Alloy> alloys,
        Entries<CoilSpec> coils,
        Entries<ContactSpec> contacts,
        Entries<JumperSpec> jumpers,
        Entries<SwitchSpec> switches,
        Entries<FuseSpec> fuses,
        Entries<BoardSpec> boards,
        Entries<ChargerSpec> chargers) {}
