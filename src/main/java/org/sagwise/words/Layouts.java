package org.sagwise.words;

/** Names of layouts, as the trade writes them. */
final class Layouts {

    private Layouts() {}

    /** {@code 1s}, {@code 2p}, {@code 3s}, {@code 2s2p}. */
    static String of(Recipe recipe) {
        if (recipe.side() == 1) {
            return recipe.rows() + "s";
        }
        return recipe.rows() == 1 ? recipe.side() + "p" : recipe.rows() + "s" + recipe.side() + "p";
    }
}
