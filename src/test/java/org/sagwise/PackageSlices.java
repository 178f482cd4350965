package org.sagwise;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;

/** Every package by itself, whichever room it lies in. */
enum PackageSlices implements SliceAssignment {
    EACH;

    @Override
    public SliceIdentifier getIdentifierOf(JavaClass type) {
        return SliceIdentifier.of(type.getPackageName());
    }

    @Override
    public String getDescription() {
        return "packages";
    }
}
