package org.ohmloom.review;

import java.util.Optional;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Zone;

/** The ambient of things that are not wires. */
final class Surroundings {

    private Surroundings() {}

    /** Ambient of a connector: of its zone, else of its component's zone, else the default, deg C. */
    static double ambientCelsius(Harness harness, Connector connector) {
        return connector
                .zone()
                .or(() -> connector
                        .component()
                        .flatMap(id -> harness.components().get(id).zone()))
                .flatMap(id -> harness.zones().find(id))
                .map(Zone::ambientCelsius)
                .or(() -> Optional.of(harness.rules().ambientCelsius()))
                .orElseThrow();
    }
}
