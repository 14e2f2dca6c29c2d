package org.ohmloom.graph;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.CaseGround;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.ChassisPath;
import org.ohmloom.model.ChassisRule;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Device;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Place;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.GaugeSystem;

/**
 * Draws up a small harness for a test, a line for each element. Ends of wires are written as people do: {@code X1.3},
 * {@code BAT1.+}, {@code S1}, {@code G1}, {@code loose}. Wires are given by their resistance. Everything is invented.
 */
public final class HarnessSketch {
    private final Map<String, Element> elements = new LinkedHashMap<>();

    /** Any element. */
    public HarnessSketch with(Element element) {
        elements.put(element.id().value(), element);
        return this;
    }

    public HarnessSketch component(String id, Device device) {
        return with(Component.of(id, id, device));
    }

    public HarnessSketch battery(String id, double emfVolts, double internalOhms) {
        return component(id, new Battery(emfVolts, internalOhms, 60));
    }

    /** A fuse of a measured resistance. */
    public HarnessSketch fuse(String id, double ratingAmps, double ohms) {
        return component(
                id,
                new ProtectiveDevice(
                        ProtectiveDevice.Kind.FUSE, "ISO 8820-3 type C", ratingAmps, OptionalDouble.of(ohms)));
    }

    /** A load that is a constant resistance of its rated volts over its rated amps. */
    public HarnessSketch load(String id, double ratedAmps, double ratedVolts) {
        return component(id, Load.of(new Draw.Resistive(ratedAmps, ratedVolts)));
    }

    /** A kind of contact of that resistance of a mated pair. */
    public HarnessSketch contact(String id, double contactOhms) {
        return with(new ContactPart(
                new ContactId(id),
                Optional.empty(),
                contactOhms,
                List.of(),
                0.2,
                6,
                1,
                4,
                List.of(),
                5,
                "Sn",
                Optional.empty(),
                Optional.empty()));
    }

    /** A connector on a component; each cavity as {@code name terminal contact}, for example {@code "1 + CT"}. */
    public HarnessSketch connector(String id, String component, String... cavities) {
        List<Cavity> all = new ArrayList<>();
        for (String cavity : cavities) {
            String[] words = cavity.split(" ");
            all.add(new Cavity(words[0], Optional.of(words[1]), contactOf(words, 2), Optional.empty(), false));
        }
        return with(connector(id, Optional.of(new ComponentId(component)), Optional.empty(), all));
    }

    /** An in-line pair; each cavity as {@code name contact}, the contact being that of the first connector. */
    public HarnessSketch inline(String one, String other, String... cavities) {
        List<Cavity> here = new ArrayList<>();
        List<Cavity> there = new ArrayList<>();
        for (String cavity : cavities) {
            String[] words = cavity.split(" ");
            here.add(new Cavity(words[0], Optional.empty(), contactOf(words, 1), Optional.empty(), false));
            there.add(new Cavity(words[0], Optional.empty(), Optional.empty(), Optional.empty(), false));
        }
        with(connector(one, Optional.empty(), Optional.of(new ConnectorId(other)), here));
        return with(connector(other, Optional.empty(), Optional.of(new ConnectorId(one)), there));
    }

    private static Optional<ContactId> contactOf(String[] words, int place) {
        return words.length > place ? Optional.of(new ContactId(words[place])) : Optional.empty();
    }

    private static Connector connector(
            String id, Optional<ComponentId> component, Optional<ConnectorId> mate, List<Cavity> cavities) {
        return new Connector(
                new ConnectorId(id),
                id,
                component,
                mate,
                Optional.empty(),
                cavities,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    public HarnessSketch splice(String id, double jointOhms) {
        return with(new Splice(
                new SpliceId(id), id, jointOhms, Optional.empty(), Optional.empty(), false, Optional.empty()));
    }

    /** A chassis body without any resistance of its own. */
    public HarnessSketch body(String id) {
        return with(new ChassisBody(new ChassisBodyId(id), id, false, List.of(), Optional.empty()));
    }

    /** A chassis body with a resistance from each ground point to its middle. */
    public HarnessSketch body(String id, double toMiddleOhms) {
        return with(new ChassisBody(
                new ChassisBodyId(id),
                id,
                false,
                List.of(),
                Optional.of(new ChassisRule(toMiddleOhms, "invented for a test"))));
    }

    /** A resistance entered between two ground points of a body that was named before. */
    public HarnessSketch path(String body, String from, String to, double ohms) {
        ChassisBody before = (ChassisBody) elements.get(body);
        List<ChassisPath> paths = new ArrayList<>(before.paths());
        paths.add(new ChassisPath(new GroundPointId(from), new GroundPointId(to), ohms));
        return with(new ChassisBody(before.id(), before.name(), before.isolated(), paths, before.rule()));
    }

    public HarnessSketch ground(String id, String body, double jointOhms) {
        return with(new GroundPoint(
                new GroundPointId(id),
                id,
                new ChassisBodyId(body),
                jointOhms,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty()));
    }

    public HarnessSketch strap(String id, String from, String to, double ohms) {
        return with(new Strap(
                new StrapId(id),
                id,
                new GroundPointId(from),
                new GroundPointId(to),
                ohms,
                Optional.empty(),
                false,
                Optional.empty()));
    }

    /** Bolts a terminal of a component that was named before onto a ground point. */
    public HarnessSketch bolt(String component, String terminal, String ground, double jointOhms) {
        Component before = (Component) elements.get(component);
        return with(new Component(
                before.id(),
                before.name(),
                before.device(),
                before.part(),
                before.zone(),
                before.at(),
                Optional.of(new CaseGround(terminal, new GroundPointId(ground), jointOhms)),
                before.existing(),
                before.assembly()));
    }

    public HarnessSketch wire(String id, String from, String to, double ohms) {
        return wire(id, from, to, ohms, SignalClass.FEED, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** A wire with everything these tests ask for; what it is joined to must have been named before. */
    public HarnessSketch wire(
            String id,
            String from,
            String to,
            double ohms,
            SignalClass signalClass,
            OptionalDouble lengthMetres,
            OptionalDouble presentAmps) {
        Wire plain = Wire.of(id, end(from), end(to), signalClass);
        return with(new Wire(
                plain.id(),
                plain.from(),
                plain.to(),
                plain.gauge(),
                plain.family(),
                plain.insulation(),
                plain.colour(),
                lengthMetres,
                signalClass,
                plain.circuit(),
                plain.cable(),
                OptionalDouble.of(ohms),
                presentAmps,
                false,
                plain.assembly()));
    }

    /** A wire of a length, m, and a tenth of an ohm. */
    public HarnessSketch run(String id, String from, String to, double lengthMetres) {
        return wire(id, from, to, 0.1, SignalClass.FEED, OptionalDouble.of(lengthMetres), OptionalDouble.empty());
    }

    private WireEnd end(String text) {
        String[] words = text.split("\\.", 2);
        Element element = elements.get(words[0]);
        if (element instanceof Connector connector) {
            return new WireEnd.AtCavity(connector.id(), words[1]);
        }
        if (element instanceof Component component) {
            return new WireEnd.AtTerminal(component.id(), words[1]);
        }
        if (element instanceof Splice splice) {
            return new WireEnd.AtSplice(splice.id());
        }
        if (element instanceof GroundPoint ground) {
            return new WireEnd.AtGround(ground.id());
        }
        if (text.equals("loose")) {
            return new WireEnd.Loose();
        }
        throw new IllegalArgumentException("the sketch has no " + text + " yet");
    }

    /** A bundle segment; breakouts not named before are added. */
    public HarnessSketch segment(String id, String from, String to, double lengthMetres) {
        for (String breakout : List.of(from, to)) {
            elements.putIfAbsent(breakout, new Breakout(new BreakoutId(breakout), breakout, Optional.empty()));
        }
        return with(new BundleSegment(
                new SegmentId(id),
                new BreakoutId(from),
                new BreakoutId(to),
                lengthMetres,
                Optional.empty(),
                Optional.empty(),
                Optional.empty()));
    }

    /** Puts a component, connector, splice or ground point that was named before at a breakout. */
    public HarnessSketch at(String id, String breakout) {
        Optional<BreakoutId> at = Optional.of(new BreakoutId(breakout));
        Element before = elements.get(id);
        if (before instanceof Component c) {
            return with(new Component(
                    c.id(), c.name(), c.device(), c.part(), c.zone(), at, c.caseGround(), c.existing(), c.assembly()));
        }
        if (before instanceof Connector c) {
            return with(new Connector(
                    c.id(),
                    c.name(),
                    c.component(),
                    c.mate(),
                    at,
                    c.cavities(),
                    c.part(),
                    c.lock(),
                    c.backshell(),
                    c.limitCelsius(),
                    c.zone(),
                    c.existing(),
                    c.assembly()));
        }
        if (before instanceof GroundPoint g) {
            return with(new GroundPoint(
                    g.id(), g.name(), g.body(), g.jointOhms(), at, g.zone(), g.part(), g.existing(), g.assembly()));
        }
        return place(id, new Place.AtBreakout(at.get()));
    }

    /** Puts a splice that was named before along a segment. */
    public HarnessSketch along(String splice, String segment, double distanceMetres) {
        return place(splice, new Place.OnSegment(new SegmentId(segment), distanceMetres));
    }

    private HarnessSketch place(String id, Place place) {
        Splice s = (Splice) elements.get(id);
        return with(
                new Splice(s.id(), s.name(), s.jointOhms(), Optional.of(place), s.part(), s.existing(), s.assembly()));
    }

    public Harness harness() {
        DesignRules rules =
                new DesignRules("road-vehicle", 12, 0.03, GaugeSystem.METRIC, "none named", Optional.empty(), 30);
        return Harness.empty(TitleBlock.of("Sketch for a test", "SKETCH"), rules)
                .withAll(elements.values());
    }

    /** A state in which only the batteries are connected. */
    public static OperatingState state() {
        return OperatingState.of("running", "running", EngineMode.RUNNING);
    }

    /** The network while only the batteries are connected. */
    public Network network() {
        return network(state());
    }

    public Network network(OperatingState state) {
        return NetworkBuilder.build(
                harness(), state, wire -> wire.measuredOhms().orElseThrow(), FuseOhms.NONE);
    }
}
