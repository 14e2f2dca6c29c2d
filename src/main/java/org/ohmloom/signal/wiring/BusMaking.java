package org.ohmloom.signal.wiring;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.ohmloom.edit.FreshIds;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Place;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireColour;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.way.Ways;

/**
 * Makes the lines of one data bus side by side: high, low, and the drain of a shield where the bus has one. Each part between two
 * connectors or splices is a twisted pair of its own.
 */
final class BusMaking {
    private final Harness harness;
    private final Places places;
    private final SplicePlaces splicePlaces;
    private final FreshIds fresh;
    private final String name;
    private final boolean shielded;
    private final int lines;
    private final Ways ways;
    private final List<List<Wire>> wires = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    private final List<Optional<WireColour>> colours =
            new ArrayList<>(List.of(Optional.empty(), Optional.empty(), Optional.empty()));
    private final List<Splice> splices = new ArrayList<>();
    private final List<Cable> cables = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();

    BusMaking(
            Harness harness, Places places, SplicePlaces splicePlaces, FreshIds fresh, String name, boolean shielded) {
        this.harness = harness;
        this.places = places;
        this.splicePlaces = splicePlaces;
        this.fresh = fresh;
        this.name = name;
        this.shielded = shielded;
        this.lines = shielded ? 3 : 2;
        this.ways = new Ways(
                harness,
                connector -> places.freeCavities(connector).limit(lines).count() == lines);
    }

    /**
     * Where the lines end together.
     *
     * @param ends     end of the high and of the low line, and of the drain
     * @param at       where that lies, if it is known
     * @param assembly the assembly a wire there belongs to
     */
    record Spot(List<WireEnd> ends, Optional<BreakoutId> at, Optional<AssemblyId> assembly) {
        Spot {
            ends = List.copyOf(ends);
        }
    }

    /** Ways through the pairs of connectors that have room for all lines. */
    Ways ways() {
        return ways;
    }

    /** Wires of the high line, the low line, and the drain. */
    List<List<Wire>> wires() {
        return wires;
    }

    /** The colour a line has already; empty where it is to get one. */
    List<Optional<WireColour>> colours() {
        return colours;
    }

    /** Gives a line the colour it has elsewhere. */
    void colour(int line, Optional<WireColour> colour) {
        colours.set(line, colour);
    }

    List<Splice> splices() {
        return splices;
    }

    List<Cable> cables() {
        return cables;
    }

    List<String> problems() {
        return problems;
    }

    /** Splices of all lines at the end of a way; in a breakout without one. */
    Spot spliced(Optional<BreakoutId> at, List<Ways.Step> way, Optional<AssemblyId> assembly) {
        Optional<Ways.Step> last = way.isEmpty() ? Optional.empty() : Optional.of(way.get(way.size() - 1));
        List<WireEnd> ends = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            Optional<Place> place = last.filter(step -> !step.isThrough())
                    .map(splicePlaces::before)
                    .or(() -> at.map(Place.AtBreakout::new));
            Splice made = splicePlaces.splice(name, place, assembly);
            splices.add(made);
            ends.add(new WireEnd.AtSplice(made.id()));
        }
        if (!shielded) {
            ends.add(new WireEnd.Loose());
        }
        return new Spot(ends, at, assembly);
    }

    /** Makes the lines from one place to another along a way, through the pairs of connectors on it. */
    void run(Spot from, Spot to, List<Ways.Step> way) {
        Spot here = from;
        double metres = 0;
        for (Ways.Step step : way) {
            metres += step.metres();
            if (step.isThrough()) {
                ConnectorId near = step.near().orElseThrow();
                Connector entered = harness.connectors().get(near);
                Connector left = harness.connectors().get(step.far().orElseThrow());
                List<String> free = places.freeCavities(entered).limit(lines).toList();
                if (free.size() < lines) {
                    problems.add("no cavities of " + near + " and its mate are free for " + name
                            + ": a larger pair, or one more, on the way");
                    return;
                }
                part(here, spot(near, free, harness.breakout(entered), entered.assembly()), metres);
                here = spot(left.id(), free, harness.breakout(left), left.assembly());
                here.ends().forEach(places::take);
                metres = 0;
            }
        }
        part(here, to, metres);
    }

    private Spot spot(
            ConnectorId connector, List<String> cavities, Optional<BreakoutId> at, Optional<AssemblyId> assembly) {
        List<WireEnd> ends = new ArrayList<>();
        cavities.forEach(cavity -> ends.add(new WireEnd.AtCavity(connector, cavity)));
        if (!shielded) {
            ends.add(new WireEnd.Loose());
        }
        return new Spot(ends, at, assembly);
    }

    private void part(Spot from, Spot to, double metres) {
        Optional<AssemblyId> assembly = to.assembly().or(from::assembly);
        CableId cable = new CableId(fresh.next("C"));
        cables.add(Cable.pair(cable, name, shielded, assembly));
        for (int line = 0; line < lines; line++) {
            WireEnd one = from.ends().get(line);
            WireEnd other = to.ends().get(line);
            boolean loose = one instanceof WireEnd.Loose || other instanceof WireEnd.Loose;
            if (one.equals(other)) {
                continue;
            }
            places.take(one);
            places.take(other);
            wires.get(line)
                    .add(new Wire(
                            new WireId(fresh.next("W")),
                            one,
                            other,
                            harness.rules().wiringRules().signalGauge(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty(),
                            loose && metres > 0 ? OptionalDouble.of(metres) : OptionalDouble.empty(),
                            line < 2 ? SignalClass.DATA_BUS : SignalClass.SHIELD,
                            Optional.of(name),
                            Optional.of(cable),
                            OptionalDouble.empty(),
                            OptionalDouble.empty(),
                            false,
                            assembly));
        }
    }
}
