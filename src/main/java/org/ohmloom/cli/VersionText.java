package org.ohmloom.cli;

import java.util.Optional;
import picocli.CommandLine.IVersionProvider;

/** The version as the jar's manifest gives it. */
final class VersionText implements IVersionProvider {

    @Override
    public String[] getVersion() {
        String version = Optional.ofNullable(VersionText.class.getPackage().getImplementationVersion())
                .orElse("built from source");
        return new String[] {"Ohmloom " + version};
    }
}
