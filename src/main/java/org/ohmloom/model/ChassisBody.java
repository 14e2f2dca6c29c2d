package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.Optional;

/**
 * One conducting body of the vehicle: frame, engine, cab. Not 0 V: current through it makes a voltage.
 *
 * @param id       identity
 * @param name     what people call it
 * @param isolated declared isolated: nothing is meant to return through it
 * @param paths    resistances entered between pairs of its ground points
 * @param rule     resistance from every ground point without an entered path to the middle of the body
 */
public record ChassisBody(
        ChassisBodyId id, String name, boolean isolated, List<ChassisPath> paths, Optional<ChassisRule> rule)
        implements Element {

    public ChassisBody {
        notBlank(name, "name of chassis body %s", id);
        paths = List.copyOf(paths);
        that(
                paths.stream().allMatch(path -> !path.from().equals(path.to())),
                "a path of chassis body %s joins a ground point to itself",
                id);
    }
}
