package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.Optional;

/**
 * Something with terminals that the harness connects: a source, a load, a switch, a control unit.
 *
 * @param id         identity
 * @param name       what people call it, for example "Left cooling fan"
 * @param device     what it does electrically, and so which terminals it has
 * @param part       entry of the parts list, if chosen
 * @param zone       where it sits, for its ambient temperature; empty means the harness's default ambient
 * @param at         where on the physical harness its own terminals are reached; a connector has a place of its own
 * @param caseGround a terminal or the case bolted to a chassis ground point without a wire
 * @param existing   already in the vehicle: not in the cut list or the bill of materials
 * @param assembly   the assembly it belongs to
 */
public record Component(
        ComponentId id,
        String name,
        Device device,
        Optional<PartId> part,
        Optional<ZoneId> zone,
        Optional<BreakoutId> at,
        Optional<CaseGround> caseGround,
        boolean existing,
        Optional<AssemblyId> assembly)
        implements Element, Assembled {

    public Component {
        notBlank(name, "name of component %s", id);
        caseGround.ifPresent(ground -> that(
                device.terminals().contains(ground.terminal()),
                "component %s has no terminal '%s' for its case ground; it has %s",
                id,
                ground.terminal(),
                device.terminals()));
    }

    /** A component with an identity, a name and a device, everything else left open. */
    public static Component of(String id, String name, Device device) {
        return new Component(
                new ComponentId(id),
                name,
                device,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    /** Names of its terminals, as {@link Device#terminals()}. */
    public List<String> terminals() {
        return device.terminals();
    }

    /**
     * How one of its outputs switches, if that is known.
     *
     * @param output the component's own identity for a stand-alone output, as {@link OutputPin} writes it for a pin
     */
    public Optional<Driver> driver(String output) {
        if (device instanceof SolidStateOutput standAlone) {
            return standAlone.driver();
        }
        return device instanceof ControlUnit unit
                ? unit.pins().stream()
                        .filter(pin -> output.equals(id + "." + pin.name()))
                        .findFirst()
                        .flatMap(Pin::driver)
                : Optional.empty();
    }

    /** This component with another device. */
    public Component withDevice(Device changed) {
        return new Component(id, name, changed, part, zone, at, caseGround, existing, assembly);
    }

    /** This component as one that is in the vehicle already. */
    public Component asExisting() {
        return new Component(id, name, device, part, zone, at, caseGround, true, assembly);
    }

    /** This component with another name. */
    public Component withName(String changed) {
        return new Component(id, changed, device, part, zone, at, caseGround, existing, assembly);
    }
}
