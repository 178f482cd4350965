package org.sagwise;

import net.jqwik.api.lifecycle.AroundPropertyHook;
import net.jqwik.api.lifecycle.PropagationMode;
import net.jqwik.api.lifecycle.PropertyAttributes;
import net.jqwik.api.lifecycle.PropertyExecutionResult;
import net.jqwik.api.lifecycle.PropertyExecutor;
import net.jqwik.api.lifecycle.PropertyLifecycleContext;

/**
 * Gives every property the seed of its name, so that a build answers the same on every machine and
 * every day. A search ({@code -Psearch}) takes new seeds and more tries instead; jqwik then names
 * the seed of what it finds.
 *
 * <p>jqwik finds it by its name under {@code META-INF/services}.
 */
public final class PropertySeeds implements AroundPropertyHook {

    private static final int TRIES_OF_JQWIK = 1000;

    /** How many times as many tries a search makes; 0 when nothing is searched. */
    private static final int SEARCH = Integer.getInteger("sagwise.search", 0);

    static boolean isSearching() {
        return SEARCH > 0;
    }

    @Override
    public PropagationMode propagateTo() {
        return PropagationMode.ALL_DESCENDANTS;
    }

    @Override
    public PropertyExecutionResult aroundProperty(PropertyLifecycleContext context, PropertyExecutor property) {
        PropertyAttributes attributes = context.attributes();
        if (isSearching()) {
            attributes.setTries(SEARCH * attributes.tries().orElse(TRIES_OF_JQWIK));
        } else if (attributes.seed().isEmpty()) {
            String name = context.containerClass().getName() + "."
                    + context.targetMethod().getName();
            attributes.setSeed(String.valueOf(name.hashCode()));
        }
        return property.execute();
    }
}
