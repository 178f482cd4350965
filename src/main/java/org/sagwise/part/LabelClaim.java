package org.sagwise.part;

import java.util.OptionalDouble;

/**
 * What a cell's label says where it differs from what the cell can do.
 *
 * @param limitA claimed continuous limit (A)
 * @param capacityAh claimed capacity (Ah)
 */
public record LabelClaim(OptionalDouble limitA, OptionalDouble capacityAh) {

    public LabelClaim {
        limitA.ifPresent(claimed -> Require.positive(claimed, "limitA"));
        capacityAh.ifPresent(claimed -> Require.positive(claimed, "capacityAh"));
    }
}
