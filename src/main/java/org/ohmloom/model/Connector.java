package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.positive;
import static org.ohmloom.units.Require.that;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A connector housing on the harness. It mates either with a component, cavity by cavity to the component's terminals,
 * or with another connector of the harness (an in-line pair), cavity to cavity of the same name.
 *
 * @param id                 identity
 * @param name               what people call it
 * @param component          the component it plugs into, if any
 * @param mate               the other connector of an in-line pair, if any; the two name each other
 * @param at                 where it ends on the physical harness
 * @param cavities           cavities in order, names unique
 * @param part               housing, entry of the parts list
 * @param lock               secondary lock, entry of the parts list
 * @param backshell          backshell or boot, entry of the parts list
 * @param limitCelsius       highest temperature the housing stands, deg C
 * @param zone               where it sits; empty means the zone of its component or the default ambient
 * @param existing           already in the vehicle
 * @param assembly           the assembly it belongs to
 * @param grid               how its cavities lie, when that is entered
 */
public record Connector(
        ConnectorId id,
        String name,
        Optional<ComponentId> component,
        Optional<ConnectorId> mate,
        Optional<BreakoutId> at,
        List<Cavity> cavities,
        Optional<PartId> part,
        Optional<PartId> lock,
        Optional<PartId> backshell,
        OptionalDouble limitCelsius,
        Optional<ZoneId> zone,
        boolean existing,
        Optional<AssemblyId> assembly,
        Optional<CavityGrid> grid)
        implements Element, Assembled {

    public Connector {
        notBlank(name, "name of connector %s", id);
        cavities = List.copyOf(cavities);
        that(!cavities.isEmpty(), "connector %s needs at least one cavity", id);
        List<String> names = cavities.stream().map(Cavity::name).toList();
        that(names.stream().distinct().count() == names.size(), "cavity names of connector %s repeat: %s", id, names);
        that(component.isEmpty() || mate.isEmpty(), "connector %s cannot have both a component and a mate", id);
        limitCelsius.ifPresent(value -> positive(value, "temperature limit of connector %s", id));
        grid.ifPresent(each -> each.requireWhole(id, names));
    }

    /** A connector whose grid is not entered. */
    public Connector(
            ConnectorId id,
            String name,
            Optional<ComponentId> component,
            Optional<ConnectorId> mate,
            Optional<BreakoutId> at,
            List<Cavity> cavities,
            Optional<PartId> part,
            Optional<PartId> lock,
            Optional<PartId> backshell,
            OptionalDouble limitCelsius,
            Optional<ZoneId> zone,
            boolean existing,
            Optional<AssemblyId> assembly) {
        this(
                id,
                name,
                component,
                mate,
                at,
                cavities,
                part,
                lock,
                backshell,
                limitCelsius,
                zone,
                existing,
                assembly,
                Optional.empty());
    }

    /** The cavity of that name. */
    public Optional<Cavity> cavity(String cavityName) {
        return cavities.stream()
                .filter(cavity -> cavity.name().equals(cavityName))
                .findFirst();
    }

    /** This connector with another name. */
    public Connector withName(String changed) {
        return new Connector(
                id,
                changed,
                component,
                mate,
                at,
                cavities,
                part,
                lock,
                backshell,
                limitCelsius,
                zone,
                existing,
                assembly,
                grid);
    }

    /** This connector with a cavity put in the place of the one of the same name. */
    public Connector withCavity(Cavity changed) {
        List<Cavity> all = new ArrayList<>(cavities);
        all.replaceAll(cavity -> cavity.name().equals(changed.name()) ? changed : cavity);
        return new Connector(
                id,
                name,
                component,
                mate,
                at,
                all,
                part,
                lock,
                backshell,
                limitCelsius,
                zone,
                existing,
                assembly,
                grid);
    }
}
