package org.ohmloom.edit.board;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.edit.Labels;
import org.ohmloom.edit.MoveOnBoard;
import org.ohmloom.edit.PutElements;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.ChassisBody;
import org.ohmloom.model.ChassisBodyId;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Element;
import org.ohmloom.model.GroundPoint;
import org.ohmloom.model.GroundPointId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.words.Constants;
import org.ohmloom.words.Text;

/**
 * New things for a harness, each with an identity and a name it does not use yet. What is placed beside no breakout gets one of
 * its own, the end of the bundle that will lead there. For one new thing; the harness it is for is the one the edit is applied to.
 */
public final class Drafting {

    /** Joint of a new ground point, ohm: a round figure to be overwritten. */
    static final double GROUND_OHMS = 0.0002;

    private final Harness harness;
    private final FreshIds fresh;
    private final FreshNames names;
    private final List<Element> made = new ArrayList<>();
    private final TreeMap<String, Position> positions = new TreeMap<>();

    /** For a harness. */
    public Drafting(Harness harness) {
        this.harness = harness;
        this.fresh = new FreshIds(harness);
        this.names = new FreshNames(harness);
    }

    /** A breakout. */
    public Drawn breakout(Position at) {
        BreakoutId id = newBreakout("Breakout", at);
        return drawn(Labels.text("place.breakout", id), id.value());
    }

    /**
     * A component with its connector, or with its own terminals where it has none.
     *
     * @param where the breakout it hangs at, or the place of a new one
     */
    public Drawn component(StartDevice kind, Where where) {
        return component(kind, kind.isPlugged(), where);
    }

    /**
     * A component with a connector, or with its own terminals.
     *
     * @param plugged whether it comes with a connector
     * @param where   the breakout it hangs at, or the place of a new one
     */
    public Drawn component(StartDevice kind, boolean plugged, Where where) {
        ComponentId id = new ComponentId(fresh.next(kind.stem()));
        String name = names.like(Component.class, kind.words());
        Optional<BreakoutId> at = hung(where, name);
        made.add(new Component(
                id,
                name,
                kind.at(harness.rules().nominalVolts()),
                Optional.empty(),
                Optional.empty(),
                plugged ? Optional.empty() : at,
                Optional.empty(),
                false,
                Optional.empty()));
        if (plugged) {
            List<String> terminals = kind.at(harness.rules().nominalVolts()).terminals();
            List<Cavity> cavities = IntStream.range(0, terminals.size())
                    .mapToObj(k -> cavity(k + 1, Optional.of(terminals.get(k))))
                    .toList();
            newConnector(name + " connector", Optional.of(id), at, cavities);
        }
        return drawn(Labels.text("place.device", Constants.text(kind).lowerCase(), id), id.value());
    }

    /**
     * A connector that plugs into nothing yet.
     *
     * @param ways count of its cavities, 1 or more
     */
    public Drawn connector(int ways, Where where) {
        Optional<BreakoutId> at = hung(where, "Connector");
        List<Cavity> cavities = IntStream.rangeClosed(1, ways)
                .mapToObj(k -> cavity(k, Optional.empty()))
                .toList();
        ConnectorId id = newConnector("Connector", Optional.empty(), at, cavities);
        return drawn(Labels.text("place.connector", id), id.value());
    }

    /** A ground point on the first chassis body, or on a new one where there is none. */
    public Drawn ground(Where where) {
        ChassisBodyId body = harness.bodies().ids().stream().findFirst().orElseGet(() -> {
            ChassisBodyId id = new ChassisBodyId(fresh.like("FR"));
            made.add(new ChassisBody(id, names.like(ChassisBody.class, "Frame"), false, List.of(), Optional.empty()));
            return id;
        });
        GroundPointId id = new GroundPointId(fresh.next(harness.grounds().ids(), "G"));
        String name = names.like(GroundPoint.class, "Ground point");
        Optional<BreakoutId> at = hung(where, name);
        made.add(new GroundPoint(
                id, name, body, GROUND_OHMS, at, Optional.empty(), Optional.empty(), false, Optional.empty()));
        return drawn(Labels.text("drop-ground", id), id.value());
    }

    /**
     * A bundle segment; an end in the open gets a breakout of its own.
     *
     * @param lengthMetres its length, m, more than 0
     */
    public Drawn segment(Where from, Where to, double lengthMetres) {
        BreakoutId one = hung(from, "Breakout").orElseGet(() -> newBreakout("Breakout"));
        BreakoutId other = hung(to, "Breakout").orElseGet(() -> newBreakout("Breakout"));
        SegmentId id = new SegmentId(fresh.next(harness.segments().ids(), "SG"));
        made.add(new BundleSegment(
                id,
                one,
                other,
                lengthMetres,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty()));
        return drawn(Labels.text("draw-segment", id), id.value());
    }

    /** A wire from one end to another; what it carries is told by its ends, its size left to be chosen. */
    public Drawn wire(WireEnd from, WireEnd to) {
        WireId id = new WireId(fresh.next(harness.wires().ids(), "W"));
        made.add(Wire.of(id.value(), from, to, WireClass.between(harness, from, to)));
        return drawn(Labels.text("draw-wire", id), id.value());
    }

    private Optional<BreakoutId> hung(Where where, String name) {
        if (where instanceof Where.At at) {
            return Optional.of(at.breakout());
        }
        return where instanceof Where.InTheOpen open
                ? Optional.of(newBreakout(name, open.position()))
                : Optional.empty();
    }

    private BreakoutId newBreakout(String name) {
        BreakoutId id = new BreakoutId(fresh.next(harness.breakouts().ids(), "P"));
        made.add(new Breakout(id, names.like(Breakout.class, name), Optional.empty()));
        return id;
    }

    private BreakoutId newBreakout(String name, Position at) {
        BreakoutId id = newBreakout(name);
        positions.put(id.value(), at);
        return id;
    }

    private ConnectorId newConnector(
            String name, Optional<ComponentId> component, Optional<BreakoutId> at, List<Cavity> cavities) {
        ConnectorId id = new ConnectorId(fresh.next(harness.connectors().ids(), "X"));
        made.add(new Connector(
                id,
                names.like(Connector.class, name),
                component,
                Optional.empty(),
                at,
                cavities,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty()));
        return id;
    }

    private static Cavity cavity(int number, Optional<String> terminal) {
        return new Cavity(String.valueOf(number), terminal, Optional.empty(), Optional.empty(), false);
    }

    private Drawn drawn(Text label, String lead) {
        Edit put = new PutElements(label, made);
        Edit edit = positions.isEmpty()
                ? put
                : new Compound(label, List.of(put, new MoveOnBoard(label, new TreeMap<>(positions))));
        List<String> ids = new ArrayList<>(List.of(lead));
        made.stream()
                .map(each -> each.id().value())
                .filter(id -> !id.equals(lead))
                .forEach(ids::add);
        return new Drawn(edit, ids);
    }
}
