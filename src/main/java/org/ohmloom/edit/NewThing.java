package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ohmloom.model.Assembly;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ContactId;
import org.ohmloom.model.ContactPart;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.NoteId;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Part;
import org.ohmloom.model.PartId;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.StateId;
import org.ohmloom.model.Strap;
import org.ohmloom.model.StrapId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.words.Constants;
import org.ohmloom.words.UnfitException;

/**
 * Things a person adds to a list and then types over. What must have a value has one that says least: a joint without resistance, a
 * contact that takes every wire; a strap and a segment have a
 * round figure, since they cannot be without.
 */
public enum NewThing {
    WIRE("W", "Wire"),
    CONNECTOR("X", "Connector"),
    BREAKOUT("P", "Breakout"),
    SEGMENT("SG", "Segment"),
    GROUND("G", "Ground point"),
    SPLICE("SP", "Splice"),
    BODY("CB", "Chassis body"),
    STRAP("ST", "Strap"),
    CABLE("C", "Cable"),
    ZONE("Z", "Zone"),
    ASSEMBLY("A", "Assembly"),
    PART("PN", "Part"),
    CONTACT("CT", "Contact"),
    STATE("state-", "State"),
    NOTE("N-", "Note");

    /** Resistance of a strap nobody has entered yet, ohm: a round figure to be overwritten. */
    static final double STRAP_OHMS = 0.001;

    /** Length of a segment nobody has entered yet, m: a round figure to be overwritten. */
    static final double SEGMENT_METRES = 1;

    /** A crimp that takes every conductor, mm2, and a strip length, mm: to be overwritten. */
    private static final double LEAST_MM2 = 0.01, MOST_MM2 = 1000, MOST_MM = 100, STRIP_MM = 5;

    private final String letters;
    private final String words;

    NewThing(String letters, String words) {
        this.letters = letters;
        this.words = words;
    }

    /** What it is called, as "Splice". */
    public String words() {
        return words;
    }

    /**
     * The edit that adds one, with the next identity of its kind.
     *
     * @throws IllegalArgumentException when something it cannot be without is missing; the message says what
     */
    public PutElements added(Harness harness) {
        FreshIds ids = new FreshIds(harness);
        String id = ids.next(FreshIds.letters(existing(harness).stream().map(each -> (ElementId) each), letters));
        Element made = made(this, harness, id, name(id));
        return new PutElements(Labels.text("add", Constants.text(this).lowerCase(), id), List.of(made));
    }

    private List<? extends ElementId> existing(Harness harness) {
        return new ArrayList<>(
                switch (this) {
                    case WIRE -> harness.wires().ids();
                    case CONNECTOR -> harness.connectors().ids();
                    case BREAKOUT -> harness.breakouts().ids();
                    case SEGMENT -> harness.segments().ids();
                    case GROUND -> harness.grounds().ids();
                    case SPLICE -> harness.splices().ids();
                    case BODY -> harness.bodies().ids();
                    case STRAP -> harness.straps().ids();
                    case CABLE -> harness.cables().ids();
                    case ZONE -> harness.zones().ids();
                    case ASSEMBLY -> harness.assemblies().ids();
                    case PART -> harness.parts().ids();
                    case CONTACT -> harness.contacts().ids();
                    case STATE -> harness.states().ids();
                    case NOTE -> harness.notes().ids();
                });
    }

    /** What it is called at first: the kind and its id, of a state the kind and its number. */
    private String name(String id) {
        return words + " " + (this == STATE ? id.substring(letters.length()) : id);
    }

    private static Element made(NewThing kind, Harness harness, String id, String name) {
        return switch (kind) {
            case WIRE -> Wire.of(id, new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.FEED);
            case CONNECTOR -> connector(id, name);
            case BREAKOUT -> new Breakout(new BreakoutId(id), name, Optional.empty());
            case SEGMENT -> segment(harness, id);
            case GROUND -> ground(harness, id, name);
            case SPLICE -> new Splice(
                    new SpliceId(id),
                    name,
                    0,
                    Optional.empty(),
                    Optional.empty(),
                    false,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty());
            case BODY -> new ChassisBody(new ChassisBodyId(id), name, false, List.of(), Optional.empty());
            case STRAP -> strap(harness, id, name);
            case CABLE -> new Cable(
                    new CableId(id),
                    name,
                    Cable.Kind.MULTICORE,
                    false,
                    OptionalDouble.empty(),
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty());
            case ZONE -> new Zone(new ZoneId(id), name, harness.rules().ambientCelsius(), false);
            case ASSEMBLY -> new Assembly(new AssemblyId(id), name, id, "A");
            case PART -> new Part(
                    new PartId(id),
                    "not entered",
                    name,
                    OptionalDouble.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    List.of(),
                    false);
            case CONTACT -> contact(id);
            case STATE -> new OperatingState(
                    new StateId(id), name, EngineMode.OFF, new TreeMap<>(), new TreeMap<>(), new TreeMap<>());
            case NOTE -> new Note(new NoteId(id), Optional.empty(), "New note");
        };
    }

    private static Element connector(String id, String name) {
        return new Connector(
                new ConnectorId(id),
                name,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                List.of(new Cavity("1", Optional.empty(), Optional.empty(), Optional.empty(), false)),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    private static Element segment(Harness harness, String id) {
        List<BreakoutId> ends = new ArrayList<>(harness.breakouts().ids());
        if (ends.size() < 2) {
            throw new UnfitException("a segment joins two breakouts; add them first");
        }
        return new BundleSegment(
                new SegmentId(id),
                ends.get(ends.size() - 2),
                ends.get(ends.size() - 1),
                SEGMENT_METRES,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty());
    }

    private static Element ground(Harness harness, String id, String name) {
        ChassisBodyId body = harness.bodies().ids().stream()
                .findFirst()
                .orElseThrow(() -> new UnfitException("a ground point sits on a chassis body; add one first"));
        return new GroundPoint(
                new GroundPointId(id),
                name,
                body,
                0,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                false,
                Optional.empty());
    }

    private static Element strap(Harness harness, String id, String name) {
        List<GroundPointId> grounds = new ArrayList<>(harness.grounds().ids());
        if (grounds.size() < 2) {
            throw new UnfitException("a strap joins two ground points; add them first");
        }
        return new Strap(
                new StrapId(id),
                name,
                grounds.get(0),
                grounds.get(1),
                STRAP_OHMS,
                Optional.empty(),
                false,
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty());
    }

    private static Element contact(String id) {
        return new ContactPart(
                new ContactId(id),
                Optional.empty(),
                0,
                List.of(),
                LEAST_MM2,
                MOST_MM2,
                0,
                MOST_MM,
                List.of(),
                STRIP_MM,
                "not entered",
                Optional.empty(),
                Optional.empty());
    }
}
