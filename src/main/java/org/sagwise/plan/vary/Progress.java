package org.sagwise.plan.vary;

/** Hears how far a long piece of work is. */
@FunctionalInterface
public interface Progress {

    /** Listens to nothing and never calls off. */
    Progress NONE = share -> true;

    /**
     * Called now and then.
     *
     * @param share how much is done, 0 to 1
     * @return whether it is to go on; if not, it ends with what it has
     */
    boolean goesOn(double share);
}
