package org.sagwise.words;

import org.sagwise.part.key.KeySpec;
import org.sagwise.part.key.Keys;
import org.sagwise.scenario.Part;

/** What the parts of a bench have to say. */
final class SaidKeys {

    private SaidKeys() {}

    /** What a part says, without what goes without saying. */
    static Keys of(Part part) {
        Keys keys = part.keys().without("id", "kind", "label", "mark", Keys.FOREIGN);
        if (keys.has("model")) {
            return keys;
        }
        for (KeySpec spec : part.kind().keys()) {
            Object value = keys.values().get(spec.name());
            boolean usual = value != null
                    && (value.equals(spec.defaultNumber().stream()
                                    .boxed()
                                    .findFirst()
                                    .orElse(null))
                            || value.equals(spec.defaultWord().orElse(null))
                            || value.equals(spec.defaultFlag().orElse(null)));
            keys = usual ? keys.without(spec.name()) : keys;
        }
        return keys;
    }
}
