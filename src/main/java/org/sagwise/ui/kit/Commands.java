package org.sagwise.ui.kit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Everything that the window can be told to do, by id. Each feature adds its own commands; menus,
 * bars, keys and the help on keys look them up here, so that a command is known in one place.
 */
public final class Commands {

    private final Map<String, Command> byId = new LinkedHashMap<>();

    /**
     * Makes commands known.
     *
     * @throws IllegalArgumentException if an id is taken
     */
    public Commands add(Collection<Command> more) {
        for (Command command : more) {
            if (byId.putIfAbsent(command.id(), command) != null) {
                throw new IllegalArgumentException("two commands are called " + command.id());
            }
        }
        return this;
    }

    /**
     * The command of an id.
     *
     * @throws IllegalArgumentException if there is none
     */
    public Command get(String id) {
        return Optional.ofNullable(byId.get(id)).orElseThrow(() -> new IllegalArgumentException("no command " + id));
    }

    /** The commands in a row of the table of menus, without its lines and menus. */
    public List<Command> row(String id) {
        return MenuTable.row(id).stream()
                .filter(byId::containsKey)
                .map(byId::get)
                .toList();
    }
}
