package org.ohmloom.analysis.start;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The answers a first harness is laid out from. The fuse box is its middle; every place hangs on it by a bundle of its own.
 *
 * @param title       title of the harness
 * @param craft       what it is for
 * @param supply      what feeds it
 * @param places      places, names unique, at least one
 * @param switchPlace name of the place where hand switches sit
 * @param unitPlace   name of the place where the control unit sits; empty without one
 * @param loads       loads
 * @param sensors     sensors; they need a control unit
 */
public record StartPlan(
        String title,
        StartCraft craft,
        StartSupply supply,
        List<StartPlace> places,
        String switchPlace,
        Optional<String> unitPlace,
        List<StartLoad> loads,
        List<StartSensor> sensors) {

    public StartPlan {
        notBlank(title, "title of the harness");
        places = List.copyOf(places);
        loads = List.copyOf(loads);
        sensors = List.copyOf(sensors);
        problem(places, switchPlace, unitPlace, supply, loads, sensors).ifPresent(text -> that(false, "%s", text));
    }

    private static Optional<String> problem(
            List<StartPlace> places,
            String switchPlace,
            Optional<String> unitPlace,
            StartSupply supply,
            List<StartLoad> loads,
            List<StartSensor> sensors) {
        List<String> names = places.stream().map(StartPlace::name).toList();
        if (names.stream().distinct().count() != names.size()) {
            return Optional.of("the names of places repeat: " + names);
        }
        List<String> asked = new ArrayList<>(List.of(supply.place(), switchPlace));
        unitPlace.ifPresent(asked::add);
        Stream.concat(loads.stream().map(StartLoad::place), sensors.stream().map(StartSensor::place))
                .forEach(asked::add);
        Optional<String> unknown =
                asked.stream().filter(place -> !names.contains(place)).findFirst();
        if (unknown.isPresent()) {
            return Optional.of("there is no place '" + unknown.get() + "'; the places are " + names);
        }
        if (unitPlace.isEmpty() && !sensors.isEmpty()) {
            return Optional.of("sensors need a control unit that reads them; give it a place");
        }
        return unitPlace.isPresent()
                ? Optional.empty()
                : loads.stream()
                        .filter(load -> load.control() == StartLoad.Control.CONTROL_UNIT)
                        .findFirst()
                        .map(load -> load.name() + " needs a control unit that switches it; give it a place");
    }
}
