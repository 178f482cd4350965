package org.sagwise.web;

import org.teavm.classlib.ResourceSupplier;
import org.teavm.classlib.ResourceSupplierContext;

/** Tells the compiler of the page's script what it takes along. No running program has that compiler, nor asks for this. */
@SuppressWarnings("deprecation")
public final class PageSupplier implements ResourceSupplier {

    @Override
    public String[] supplyResources(ResourceSupplierContext context) {
        return PageResources.files().toArray(String[]::new);
    }
}
