package org.ohmloom.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The whole harness: an immutable document. Changing one element makes a new harness that shares the rest.
 * <p>Identities are unique across all kinds of element and every reference leads somewhere; a harness may otherwise be as
 * unfinished as a person likes. Everything a person can delete is inside it, so everything can be undone.
 *
 * @param titleBlock  title block and revisions
 * @param rules       design basis and limits
 * @param parts       parts list
 * @param contacts    kinds of contact
 * @param assemblies  assemblies
 * @param zones       zones
 * @param breakouts   breakouts and ends of the physical harness
 * @param segments    bundle segments
 * @param components  components
 * @param connectors  connectors
 * @param splices     splices
 * @param bodies      chassis bodies
 * @param grounds     ground points
 * @param straps      bonding straps
 * @param cables      multicore cables and twisted pairs
 * @param wires       wires
 * @param states      operating states
 * @param loadGroups  which loads may run together
 * @param sequences   timed sequences of operating states
 * @param buses       data buses
 * @param waivers     accepted findings
 * @param notes       remarks
 * @param readings    what tests of built harnesses found: the as-built record
 * @param layout      positions on the layout board by id of element
 * @param unknownKeys keys of the file that this version does not know
 */
public record Harness(
        TitleBlock titleBlock,
        DesignRules rules,
        Register<PartId, Part> parts,
        Register<ContactId, ContactPart> contacts,
        Register<AssemblyId, Assembly> assemblies,
        Register<ZoneId, Zone> zones,
        Register<BreakoutId, Breakout> breakouts,
        Register<SegmentId, BundleSegment> segments,
        Register<ComponentId, Component> components,
        Register<ConnectorId, Connector> connectors,
        Register<SpliceId, Splice> splices,
        Register<ChassisBodyId, ChassisBody> bodies,
        Register<GroundPointId, GroundPoint> grounds,
        Register<StrapId, Strap> straps,
        Register<CableId, Cable> cables,
        Register<WireId, Wire> wires,
        Register<StateId, OperatingState> states,
        Register<LoadGroupId, LoadGroup> loadGroups,
        Register<SequenceId, StateSequence> sequences,
        Register<BusId, DataBus> buses,
        Register<WaiverId, Waiver> waivers,
        Register<NoteId, Note> notes,
        Register<ReadingId, Reading> readings,
        SortedMap<String, Position> layout,
        UnknownKeys unknownKeys) {

    /**
     * Checks identities and references.
     *
     * @throws BrokenReferenceException when a reference leads nowhere
     * @throws IllegalArgumentException when two elements have one identity
     */
    // Not the compact form: the check reads the fields, which that form sets only at its end.
    public Harness(
            TitleBlock titleBlock,
            DesignRules rules,
            Register<PartId, Part> parts,
            Register<ContactId, ContactPart> contacts,
            Register<AssemblyId, Assembly> assemblies,
            Register<ZoneId, Zone> zones,
            Register<BreakoutId, Breakout> breakouts,
            Register<SegmentId, BundleSegment> segments,
            Register<ComponentId, Component> components,
            Register<ConnectorId, Connector> connectors,
            Register<SpliceId, Splice> splices,
            Register<ChassisBodyId, ChassisBody> bodies,
            Register<GroundPointId, GroundPoint> grounds,
            Register<StrapId, Strap> straps,
            Register<CableId, Cable> cables,
            Register<WireId, Wire> wires,
            Register<StateId, OperatingState> states,
            Register<LoadGroupId, LoadGroup> loadGroups,
            Register<SequenceId, StateSequence> sequences,
            Register<BusId, DataBus> buses,
            Register<WaiverId, Waiver> waivers,
            Register<NoteId, Note> notes,
            Register<ReadingId, Reading> readings,
            SortedMap<String, Position> layout,
            UnknownKeys unknownKeys) {
        this.titleBlock = titleBlock;
        this.rules = rules;
        this.parts = parts;
        this.contacts = contacts;
        this.assemblies = assemblies;
        this.zones = zones;
        this.breakouts = breakouts;
        this.segments = segments;
        this.components = components;
        this.connectors = connectors;
        this.splices = splices;
        this.bodies = bodies;
        this.grounds = grounds;
        this.straps = straps;
        this.cables = cables;
        this.wires = wires;
        this.states = states;
        this.loadGroups = loadGroups;
        this.sequences = sequences;
        this.buses = buses;
        this.waivers = waivers;
        this.notes = notes;
        this.readings = readings;
        this.layout = Collections.unmodifiableSortedMap(new TreeMap<>(layout));
        this.unknownKeys = unknownKeys;
        References.requireWhole(this);
    }

    /** A harness without elements. */
    public static Harness empty(TitleBlock titleBlock, DesignRules rules) {
        return new Harness(
                titleBlock,
                rules,
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                Register.empty(),
                new TreeMap<>(),
                UnknownKeys.NONE);
    }

    /** The registers in file order. */
    public List<Register<? extends ElementId, ? extends Element>> registers() {
        return List.of(
                parts,
                contacts,
                assemblies,
                zones,
                breakouts,
                segments,
                components,
                connectors,
                splices,
                bodies,
                grounds,
                straps,
                cables,
                wires,
                states,
                loadGroups,
                sequences,
                buses,
                waivers,
                notes,
                readings);
    }

    /** All elements in file order. */
    public Stream<Element> elements() {
        return registers().stream().map(Register::all).flatMap(Collection::stream);
    }

    /** The element with that id, of whatever kind. */
    public Optional<Element> element(String id) {
        return elements().filter(element -> element.id().value().equals(id)).findFirst();
    }

    /** The contact crimped for a wire's end; none outside connectors or where none is chosen. */
    public Optional<ContactPart> contact(WireEnd end) {
        return end instanceof WireEnd.AtCavity at
                ? connectors
                        .get(at.connector())
                        .cavity(at.cavity())
                        .flatMap(Cavity::contact)
                        .flatMap(contacts::find)
                : Optional.empty();
    }

    /** Where a wire can meet a terminal: on the terminal itself, and in every cavity that leads to it. */
    public List<WireEnd> endsAt(ComponentId component, String terminal) {
        List<WireEnd> ends = new ArrayList<>(List.of(new WireEnd.AtTerminal(component, terminal)));
        for (Connector connector : connectors.all()) {
            if (connector.component().filter(component::equals).isPresent()) {
                connector.cavities().stream()
                        .filter(cavity ->
                                cavity.terminal().filter(terminal::equals).isPresent())
                        .forEach(cavity -> ends.add(new WireEnd.AtCavity(connector.id(), cavity.name())));
            }
        }
        return ends;
    }

    /** This harness with the element added, or in the place of the one of its identity. */
    public Harness with(Element element) {
        return withAll(List.of(element));
    }

    /** This harness with the elements added or put in place; they may refer to one another. */
    public Harness withAll(Collection<? extends Element> changed) {
        return Assembling.with(this, changed);
    }

    /**
     * This harness without that element.
     *
     * @throws BrokenReferenceException when something still refers to it
     */
    public Harness without(ElementId id) {
        return withoutAll(List.of(id));
    }

    /**
     * This harness without those elements.
     *
     * @throws BrokenReferenceException when something left refers to one of them
     */
    public Harness withoutAll(Collection<? extends ElementId> ids) {
        return Assembling.without(this, ids);
    }

    /** This harness with another title block. */
    public Harness withTitleBlock(TitleBlock changed) {
        return new Harness(
                changed,
                rules,
                parts,
                contacts,
                assemblies,
                zones,
                breakouts,
                segments,
                components,
                connectors,
                splices,
                bodies,
                grounds,
                straps,
                cables,
                wires,
                states,
                loadGroups,
                sequences,
                buses,
                waivers,
                notes,
                readings,
                layout,
                unknownKeys);
    }

    /** The breakout a connector is reached at: where it ends, else where its component or its mate is reached. */
    public Optional<BreakoutId> breakout(Connector connector) {
        return connector
                .at()
                .or(() -> connector.component().flatMap(id -> components.get(id).at()))
                .or(() -> mate(connector).flatMap(Connector::at));
    }

    /** The other half of an in-line pair, whichever of the two names it. */
    public Optional<Connector> mate(Connector connector) {
        return connector.component().isPresent()
                ? Optional.empty()
                : connector.mate().flatMap(connectors::find).or(() -> connectors.all().stream()
                        .filter(each ->
                                each.mate().filter(connector.id()::equals).isPresent())
                        .findFirst());
    }

    /** Ambient of a connector: of its zone, else of its component's zone, else the default, deg C. */
    public double ambientCelsius(Connector connector) {
        return connector
                .zone()
                .or(() -> connector.component().flatMap(id -> components.get(id).zone()))
                .flatMap(zones::find)
                .map(Zone::ambientCelsius)
                .orElseGet(rules::ambientCelsius);
    }

    /** This harness judged by other rules. */
    public Harness withRules(DesignRules changed) {
        return new Harness(
                titleBlock,
                changed,
                parts,
                contacts,
                assemblies,
                zones,
                breakouts,
                segments,
                components,
                connectors,
                splices,
                bodies,
                grounds,
                straps,
                cables,
                wires,
                states,
                loadGroups,
                sequences,
                buses,
                waivers,
                notes,
                readings,
                layout,
                unknownKeys);
    }

    /** This harness with other layout positions. */
    public Harness withLayout(SortedMap<String, Position> changed) {
        return new Harness(
                titleBlock,
                rules,
                parts,
                contacts,
                assemblies,
                zones,
                breakouts,
                segments,
                components,
                connectors,
                splices,
                bodies,
                grounds,
                straps,
                cables,
                wires,
                states,
                loadGroups,
                sequences,
                buses,
                waivers,
                notes,
                readings,
                changed,
                unknownKeys);
    }

    /** This harness with other keys to keep. */
    public Harness withUnknownKeys(UnknownKeys changed) {
        return new Harness(
                titleBlock,
                rules,
                parts,
                contacts,
                assemblies,
                zones,
                breakouts,
                segments,
                components,
                connectors,
                splices,
                bodies,
                grounds,
                straps,
                cables,
                wires,
                states,
                loadGroups,
                sequences,
                buses,
                waivers,
                notes,
                readings,
                layout,
                changed);
    }
}
