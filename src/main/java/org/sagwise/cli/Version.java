package org.sagwise.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** Which Sagwise this is: the version that the build wrote into the program's archive. */
final class Version implements IVersionProvider {

    @Override
    public String[] getVersion() {
        return new String[] {"Sagwise " + number()};
    }

    static String number() {
        String version = Version.class.getPackage().getImplementationVersion();
        return Optional.ofNullable(version).orElse("(not packaged)");
    }
}
