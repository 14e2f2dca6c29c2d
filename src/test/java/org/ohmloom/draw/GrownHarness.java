package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Cavity;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Connector;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.Covering;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.Note;
import org.ohmloom.model.NoteId;
import org.ohmloom.model.Place;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * A harness grown at random to a count of wires: a tree of bundle segments with a battery at its root, loads with connectors
 * at its breakouts, an in-line pair now and then, splices along segments, zones, coverings and notes.
 */
final class GrownHarness {

    private static final double[] SIZES_MM2 = {0.5, 0.75, 1, 1.5, 2.5, 4, 6};
    private static final String[] ZONES = {"cab", "engine", "deck"};

    private final Random random;
    private final List<Element> grown = new ArrayList<>();
    private final List<BreakoutId> breakouts = new ArrayList<>();
    private int segments;

    private GrownHarness(long seed) {
        this.random = new Random(seed);
    }

    static Harness of(long seed, int wires) {
        return new GrownHarness(seed).grow(wires);
    }

    private Harness grow(int wires) {
        DesignRules rules = new DesignRules("road-vehicle", 12, 0.03, GaugeSystem.METRIC, "PVC", Optional.empty(), 30);
        for (int k = 0; k < ZONES.length; k++) {
            grown.add(new Zone(new ZoneId(ZONES[k]), "Zone of the " + ZONES[k], 35 + 30 * k, false));
        }
        BreakoutId root = breakout();
        grown.add(component(Component.of("BT1", "Battery", new Battery(12.6, 0.01, 60)), root));
        List<WireEnd> sockets = new ArrayList<>();
        int made = 0;
        for (int number = 1; made < wires; number++) {
            BreakoutId at = reached();
            int ways = Math.min(wires - made, 1 + random.nextInt(random.nextInt(6) == 0 ? 24 : 4));
            load(number, ways, at, sockets);
            for (int way = 1; way <= ways; way++) {
                wire(++made, new WireEnd.AtCavity(new ConnectorId("X" + number), String.valueOf(way)));
            }
        }
        return Harness.empty(TitleBlock.of("Grown harness of " + wires + " wires", "EX-G-" + wires), rules)
                .withAll(grown);
    }

    /** A breakout to put something at: one there is, or a new one at the end of a new segment. */
    private BreakoutId reached() {
        if (breakouts.size() > 1 && random.nextInt(4) == 0) {
            return breakouts.get(random.nextInt(breakouts.size()));
        }
        int back = random.nextInt(Math.min(breakouts.size(), 2 + random.nextInt(8)));
        BreakoutId from = breakouts.get(breakouts.size() - 1 - back);
        BreakoutId to = breakout();
        SegmentId id = new SegmentId("SG" + ++segments);
        double metres = (5 + random.nextInt(60)) / 20.0;
        grown.add(new BundleSegment(id, from, to, metres, zone(), covering(), Optional.empty()));
        if (random.nextInt(6) == 0) {
            Place place = new Place.OnSegment(id, metres * random.nextDouble());
            grown.add(new Splice(
                    new SpliceId("SP" + segments),
                    "Splice of segment " + segments,
                    0.001,
                    Optional.of(place),
                    Optional.empty(),
                    false,
                    Optional.empty()));
        }
        if (random.nextInt(8) == 0) {
            note(id.value());
        }
        return to;
    }

    private BreakoutId breakout() {
        BreakoutId id = new BreakoutId("B" + (breakouts.size() + 1));
        String name = random.nextInt(3) == 0 ? id.value() : "Branch to the far side number " + breakouts.size();
        grown.add(new Breakout(id, name, Optional.empty()));
        breakouts.add(id);
        return id;
    }

    private Optional<ZoneId> zone() {
        int which = random.nextInt(ZONES.length + 1);
        return which == ZONES.length ? Optional.empty() : Optional.of(new ZoneId(ZONES[which]));
    }

    private Optional<Covering> covering() {
        return switch (random.nextInt(4)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(new Covering(
                    Covering.Kind.TAPE,
                    "19 mm cloth tape",
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.of(0.5),
                    Optional.of(Covering.EndFinish.TAPED)));
            case 2 -> Optional.of(new Covering(
                    Covering.Kind.CONDUIT,
                    "14 mm nominal",
                    Optional.empty(),
                    Optional.empty(),
                    OptionalDouble.empty(),
                    Optional.of(Covering.EndFinish.HEAT_SHRINK)));
            default -> Optional.of(
                    new Covering(Covering.Kind.BRAIDED_SLEEVE, "12 mm polyester, expands to 20 mm", Optional.empty()));
        };
    }

    private void load(int number, int ways, BreakoutId at, List<WireEnd> sockets) {
        Component load = component(
                Component.of("L" + number, "Load with a name, number " + number, Load.of(new Draw.Resistive(1, 12))),
                at);
        grown.add(load);
        List<Cavity> cavities = new ArrayList<>();
        for (int way = 1; way <= ways; way++) {
            cavities.add(new Cavity(
                    String.valueOf(way),
                    way <= 2 ? Optional.of(way == 1 ? "+" : "-") : Optional.empty(),
                    Optional.empty(),
                    Optional.empty(),
                    false));
        }
        grown.add(new Connector(
                new ConnectorId("X" + number),
                "Plug of load " + number,
                Optional.of(load.id()),
                Optional.empty(),
                Optional.of(at),
                cavities,
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.empty(),
                Optional.empty(),
                false,
                Optional.empty()));
        if (random.nextInt(10) == 0) {
            note(load.id().value());
        }
    }

    private void wire(int number, WireEnd end) {
        String terminal = number % 2 == 0 ? "-" : "+";
        grown.add(Wire.of(
                        "W" + number,
                        new WireEnd.AtTerminal(new ComponentId("BT1"), terminal),
                        end,
                        number % 2 == 0 ? SignalClass.RETURN : SignalClass.FEED)
                .withGauge(Optional.of(Gauge.metric(SIZES_MM2[random.nextInt(SIZES_MM2.length)]))));
    }

    private void note(String about) {
        String id = "NT" + (grown.size() + 1);
        grown.add(new Note(new NoteId(id), Optional.of(about), "Keep clear of what moves beside " + about + "."));
    }

    private static Component component(Component component, BreakoutId at) {
        return new Component(
                component.id(),
                component.name(),
                component.device(),
                component.part(),
                component.zone(),
                Optional.of(at),
                component.caseGround(),
                component.existing(),
                component.assembly());
    }
}
