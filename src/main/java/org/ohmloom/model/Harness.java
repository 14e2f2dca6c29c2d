package org.ohmloom.model;

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
 * @param waivers     accepted findings
 * @param notes       remarks
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
        Register<WaiverId, Waiver> waivers,
        Register<NoteId, Note> notes,
        SortedMap<String, Position> layout,
        UnknownKeys unknownKeys) {

    /**
     * Checks identities and references.
     *
     * @throws BrokenReferenceException when a reference leads nowhere
     * @throws IllegalArgumentException when two elements have one identity
     */
    public Harness {
        layout = Collections.unmodifiableSortedMap(new TreeMap<>(layout));
        References.requireWhole(this);
    }

    /** A harness without elements. */
    public static Harness empty(TitleBlock titleBlock, DesignRules rules) {
        return new Harness(
                titleBlock, rules, Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), Register.empty(), new TreeMap<>(), UnknownKeys.NONE);
    }

    /** The registers in file order. */
    public List<Register<? extends ElementId, ? extends Element>> registers() {
        return List.of(parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes);
    }

    /** All elements in file order. */
    public Stream<Element> elements() {
        return registers().stream().map(Register::all).flatMap(Collection::stream);
    }

    /** The element with that id, of whatever kind. */
    public Optional<Element> element(String id) {
        return elements().filter(element -> element.id().value().equals(id)).findFirst();
    }

    /** This harness with the element added, or in the place of the one of its identity. */
    public Harness with(Element element) {
        if (element instanceof Part px) {
            return withParts(parts.with(px));
        }
        if (element instanceof ContactPart cx) {
            return withContacts(contacts.with(cx));
        }
        if (element instanceof Assembly ax) {
            return withAssemblies(assemblies.with(ax));
        }
        if (element instanceof Zone zx) {
            return withZones(zones.with(zx));
        }
        if (element instanceof Breakout bx) {
            return withBreakouts(breakouts.with(bx));
        }
        if (element instanceof BundleSegment sx) {
            return withSegments(segments.with(sx));
        }
        if (element instanceof Component cx) {
            return withComponents(components.with(cx));
        }
        if (element instanceof Connector cx) {
            return withConnectors(connectors.with(cx));
        }
        if (element instanceof Splice sx) {
            return withSplices(splices.with(sx));
        }
        if (element instanceof ChassisBody bx) {
            return withBodies(bodies.with(bx));
        }
        if (element instanceof GroundPoint gx) {
            return withGrounds(grounds.with(gx));
        }
        if (element instanceof Strap sx) {
            return withStraps(straps.with(sx));
        }
        if (element instanceof Cable cx) {
            return withCables(cables.with(cx));
        }
        if (element instanceof Wire wx) {
            return withWires(wires.with(wx));
        }
        if (element instanceof OperatingState sx) {
            return withStates(states.with(sx));
        }
        if (element instanceof Waiver wx) {
            return withWaivers(waivers.with(wx));
        }
        if (element instanceof Note nx) {
            return withNotes(notes.with(nx));
        }
        throw new IllegalArgumentException("unknown kind of element " + element.getClass());
    }

    /** This harness with the elements added or put in place, references checked once at the end. */
    public Harness withAll(Collection<? extends Element> changed) {
        return Assembling.with(this, changed);
    }

    /**
     * This harness without that element.
     *
     * @throws BrokenReferenceException when something still refers to it
     */
    public Harness without(ElementId id) {
        if (id instanceof PartId px) {
            return withParts(parts.without(px));
        }
        if (id instanceof ContactId cx) {
            return withContacts(contacts.without(cx));
        }
        if (id instanceof AssemblyId ax) {
            return withAssemblies(assemblies.without(ax));
        }
        if (id instanceof ZoneId zx) {
            return withZones(zones.without(zx));
        }
        if (id instanceof BreakoutId bx) {
            return withBreakouts(breakouts.without(bx));
        }
        if (id instanceof SegmentId sx) {
            return withSegments(segments.without(sx));
        }
        if (id instanceof ComponentId cx) {
            return withComponents(components.without(cx));
        }
        if (id instanceof ConnectorId cx) {
            return withConnectors(connectors.without(cx));
        }
        if (id instanceof SpliceId sx) {
            return withSplices(splices.without(sx));
        }
        if (id instanceof ChassisBodyId bx) {
            return withBodies(bodies.without(bx));
        }
        if (id instanceof GroundPointId gx) {
            return withGrounds(grounds.without(gx));
        }
        if (id instanceof StrapId sx) {
            return withStraps(straps.without(sx));
        }
        if (id instanceof CableId cx) {
            return withCables(cables.without(cx));
        }
        if (id instanceof WireId wx) {
            return withWires(wires.without(wx));
        }
        if (id instanceof StateId sx) {
            return withStates(states.without(sx));
        }
        if (id instanceof WaiverId wx) {
            return withWaivers(waivers.without(wx));
        }
        if (id instanceof NoteId nx) {
            return withNotes(notes.without(nx));
        }
        throw new IllegalArgumentException("unknown kind of id " + id.getClass());
    }

    /** This harness with other parts list. */
    public Harness withParts(Register<PartId, Part> changed) {
        return changed == parts ? this : new Harness(titleBlock, rules, changed, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other kinds of contact. */
    public Harness withContacts(Register<ContactId, ContactPart> changed) {
        return changed == contacts ? this : new Harness(titleBlock, rules, parts, changed, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other assemblies. */
    public Harness withAssemblies(Register<AssemblyId, Assembly> changed) {
        return changed == assemblies ? this : new Harness(titleBlock, rules, parts, contacts, changed, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other zones. */
    public Harness withZones(Register<ZoneId, Zone> changed) {
        return changed == zones ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, changed, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other breakouts and ends of the physical harness. */
    public Harness withBreakouts(Register<BreakoutId, Breakout> changed) {
        return changed == breakouts ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, changed, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other bundle segments. */
    public Harness withSegments(Register<SegmentId, BundleSegment> changed) {
        return changed == segments ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, changed, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other components. */
    public Harness withComponents(Register<ComponentId, Component> changed) {
        return changed == components ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, changed, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other connectors. */
    public Harness withConnectors(Register<ConnectorId, Connector> changed) {
        return changed == connectors ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, changed, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other splices. */
    public Harness withSplices(Register<SpliceId, Splice> changed) {
        return changed == splices ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, changed, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other chassis bodies. */
    public Harness withBodies(Register<ChassisBodyId, ChassisBody> changed) {
        return changed == bodies ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, changed, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other ground points. */
    public Harness withGrounds(Register<GroundPointId, GroundPoint> changed) {
        return changed == grounds ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, changed, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other bonding straps. */
    public Harness withStraps(Register<StrapId, Strap> changed) {
        return changed == straps ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, changed, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other multicore cables and twisted pairs. */
    public Harness withCables(Register<CableId, Cable> changed) {
        return changed == cables ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, changed, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other wires. */
    public Harness withWires(Register<WireId, Wire> changed) {
        return changed == wires ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, changed, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other operating states. */
    public Harness withStates(Register<StateId, OperatingState> changed) {
        return changed == states ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, changed, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other accepted findings. */
    public Harness withWaivers(Register<WaiverId, Waiver> changed) {
        return changed == waivers ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, changed, notes, layout, unknownKeys);
    }

    /** This harness with other remarks. */
    public Harness withNotes(Register<NoteId, Note> changed) {
        return changed == notes ? this : new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, changed, layout, unknownKeys);
    }

    /** This harness with another title block. */
    public Harness withTitleBlock(TitleBlock changed) {
        return new Harness(changed, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness judged by other rules. */
    public Harness withRules(DesignRules changed) {
        return new Harness(titleBlock, changed, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, unknownKeys);
    }

    /** This harness with other layout positions. */
    public Harness withLayout(SortedMap<String, Position> changed) {
        return new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, changed, unknownKeys);
    }

    /** This harness with other keys to keep. */
    public Harness withUnknownKeys(UnknownKeys changed) {
        return new Harness(titleBlock, rules, parts, contacts, assemblies, zones, breakouts, segments, components, connectors, splices, bodies, grounds, straps, cables, wires, states, waivers, notes, layout, changed);
    }
}
