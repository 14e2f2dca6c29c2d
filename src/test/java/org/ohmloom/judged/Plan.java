package org.ohmloom.judged;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.ohmloom.model.CableId;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ChassisRule;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactLimit;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Device;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;

/** Elements of a generated harness while it is put together. Everything is invented. */
final class Plan {

    /**
     * Largest resistance of a stranded copper conductor at 20 C by nominal area in mm2, ohm per metre: ISO 6722-1:2011, from
     * memory.
     */
    static final Map<Double, Double> OHMS_PER_METRE = Map.of(
            0.5, 0.0371, 0.75, 0.0247, 1.0, 0.0185, 1.5, 0.0127, 2.5, 0.0076, 4.0, 0.00471, 6.0, 0.00314, 10.0, 0.00182,
            25.0, 0.000743, 50.0, 0.000368);

    /** Ratio of copper's resistance at 40 C to that at 20 C: (234.5 + 40) / (234.5 + 20). */
    static final double WARM = 274.5 / 254.5;

    private final Map<String, Element> elements = new LinkedHashMap<>();
    private int wires;

    List<Element> elements() {
        return List.copyOf(elements.values());
    }

    Element element(String id) {
        return elements.get(id);
    }

    Plan with(Element element) {
        elements.put(element.id().value(), element);
        return this;
    }

    void component(String id, Device device) {
        with(Component.of(id, id, device));
    }

    /** A component whose terminal is bolted to a ground point. */
    void bolted(String id, Device device, String terminal, String ground, double jointOhms) {
        Component plain = Component.of(id, id, device);
        with(new Component(
                plain.id(),
                plain.name(),
                plain.device(),
                plain.part(),
                plain.zone(),
                plain.at(),
                Optional.of(new CaseGround(terminal, new GroundPointId(ground), jointOhms)),
                false,
                Optional.empty()));
    }

    void contact(String id, double contactOhms) {
        with(contactPart(id, contactOhms));
    }

    static ContactPart contactPart(String id, double contactOhms) {
        return new ContactPart(
                new ContactId(id),
                Optional.empty(),
                contactOhms,
                List.of(new ContactLimit(20, 40), new ContactLimit(120, 30)),
                0.35,
                6,
                1.0,
                5,
                List.of(),
                5,
                "Sn",
                Optional.empty(),
                Optional.empty());
    }

    /** A connector on a component with a cavity for each terminal, named like it. */
    void connector(String id, String component, String contact, List<String> terminals) {
        List<Cavity> cavities = new ArrayList<>();
        terminals.forEach(terminal -> cavities.add(Cavity.of(terminal, terminal, contact)));
        with(new Connector(
                new ConnectorId(id),
                id,
                Optional.of(new ComponentId(component)),
                Optional.empty(),
                Optional.empty(),
                cavities,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty()));
    }

    void body(String id, double toMiddleOhms, boolean isolated) {
        with(new ChassisBody(
                new ChassisBodyId(id),
                id,
                isolated,
                List.of(),
                Optional.of(new ChassisRule(toMiddleOhms, "invented for a test"))));
    }

    void ground(String id, String body, double jointOhms) {
        with(groundPoint(id, body, jointOhms));
    }

    static GroundPoint groundPoint(String id, String body, double jointOhms) {
        return new GroundPoint(
                new GroundPointId(id),
                id,
                new ChassisBodyId(body),
                jointOhms,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    void strap(String id, String from, String to, double ohms) {
        with(strapBetween(id, from, to, ohms));
    }

    static Strap strapBetween(String id, String from, String to, double ohms) {
        return new Strap(
                new StrapId(id),
                id,
                new GroundPointId(from),
                new GroundPointId(to),
                ohms,
                Optional.empty(),
                false,
                Optional.empty());
    }

    void splice(String id, double jointOhms) {
        with(new Splice(new SpliceId(id), id, jointOhms, Optional.empty(), Optional.empty(), false, Optional.empty()));
    }

    /** A wire of a size and a length; its resistance is that of its size at 40 C. */
    String wire(WireEnd from, WireEnd to, double areaMm2, double lengthMetres, SignalClass signalClass) {
        return wire(from, to, areaMm2, lengthMetres, signalClass, Optional.empty());
    }

    String wire(
            WireEnd from,
            WireEnd to,
            double areaMm2,
            double lengthMetres,
            SignalClass signalClass,
            Optional<CableId> cable) {
        String id = "W" + ++wires;
        with(wire(id, from, to, areaMm2, lengthMetres, signalClass, cable));
        return id;
    }

    static Wire wire(
            String id,
            WireEnd from,
            WireEnd to,
            double areaMm2,
            double lengthMetres,
            SignalClass signalClass,
            Optional<CableId> cable) {
        Wire plain = Wire.of(id, from, to, signalClass);
        return new Wire(
                plain.id(),
                from,
                to,
                Optional.of(Gauge.metric(areaMm2)),
                plain.family(),
                plain.insulation(),
                plain.colour(),
                OptionalDouble.of(lengthMetres),
                signalClass,
                plain.circuit(),
                cable,
                OptionalDouble.of(OHMS_PER_METRE.get(areaMm2) * WARM * lengthMetres),
                OptionalDouble.empty(),
                false,
                Optional.empty());
    }

    static WireEnd at(String component, String terminal) {
        return new WireEnd.AtTerminal(new ComponentId(component), terminal);
    }

    static WireEnd in(String connector, String cavity) {
        return new WireEnd.AtCavity(new ConnectorId(connector), cavity);
    }

    static WireEnd on(String ground) {
        return new WireEnd.AtGround(new GroundPointId(ground));
    }

    static WireEnd joined(String splice) {
        return new WireEnd.AtSplice(new SpliceId(splice));
    }

    static Pin pin(String name, PinRole role) {
        return Pin.of(name, role);
    }

    static Pin sensorReturn(String name, double limitAmps) {
        return new Pin(
                name,
                PinRole.SENSOR_RETURN,
                Set.of(),
                OptionalDouble.of(limitAmps),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static Pin reference(String name, double volts) {
        return new Pin(
                name,
                PinRole.REFERENCE_SUPPLY,
                Set.of(),
                OptionalDouble.of(0.2),
                OptionalDouble.empty(),
                OptionalDouble.of(volts),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    static Pin pulledUp(String name, PinRole role, double volts, double ohms) {
        return new Pin(
                name,
                role,
                Set.of(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                OptionalDouble.of(volts),
                OptionalDouble.of(ohms));
    }
}
