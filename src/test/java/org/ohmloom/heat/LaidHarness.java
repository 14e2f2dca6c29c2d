package org.ohmloom.heat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.Route;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Breakout;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.SegmentId;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.model.Zone;
import org.ohmloom.model.ZoneId;
import org.ohmloom.units.GaugeSystem;

/** A harness for tests: zones Z..., one segment G... of 1 m in each, and wires that lie in named segments. */
public final class LaidHarness {
    private DesignRules rules;
    private final List<Element> elements = new ArrayList<>();
    private final SortedMap<WireId, Route> routes = new TreeMap<>();

    private LaidHarness(DesignRules rules) {
        this.rules = rules;
        breakout("A");
        breakout("B");
    }

    /** A harness judged by a basis at a nominal voltage, with an insulation and a default ambient. */
    public static LaidHarness of(String basis, double nominalVolts, String insulation, double ambientCelsius) {
        return new LaidHarness(new DesignRules(
                basis, nominalVolts, 0.05, GaugeSystem.AWG, insulation, Optional.empty(), ambientCelsius));
    }

    /** The same with sizing rules. */
    public LaidHarness sizing(SizingRules sizing) {
        rules = new DesignRules(
                rules.basis(),
                rules.nominalVolts(),
                rules.allowedDropFraction(),
                rules.gaugeSystem(),
                rules.insulation(),
                rules.minimumGauge(),
                rules.ambientCelsius(),
                Optional.of(sizing),
                rules.returns());
        return this;
    }

    private void breakout(String id) {
        elements.add(new Breakout(new BreakoutId(id), "Breakout " + id, Optional.empty()));
    }

    /** A segment G+name in a zone Z+name of that ambient. */
    public LaidHarness zone(String name, double ambientCelsius, boolean engineSpace) {
        elements.add(new Zone(new ZoneId("Z" + name), "Zone " + name, ambientCelsius, engineSpace));
        segment(name, Optional.of(new ZoneId("Z" + name)));
        return this;
    }

    /** A segment G+name without a zone. */
    public LaidHarness open(String name) {
        segment(name, Optional.empty());
        return this;
    }

    private void segment(String name, Optional<ZoneId> zone) {
        elements.add(new BundleSegment(
                new SegmentId("G" + name),
                new BreakoutId("A"),
                new BreakoutId("B"),
                1,
                zone,
                Optional.empty(),
                Optional.empty()));
    }

    /** A loose wire that lies in the named segments. */
    public LaidHarness wire(String id, String... segments) {
        return wire(Wire.of(id, new WireEnd.Loose(), new WireEnd.Loose(), SignalClass.FEED), segments);
    }

    /** A wire that lies in the named segments; with none it has no way. */
    public LaidHarness wire(Wire wire, String... segments) {
        elements.add(wire);
        if (segments.length > 0) {
            List<SegmentId> ids = List.of(segments).stream()
                    .map(name -> new SegmentId("G" + name))
                    .toList();
            routes.put(wire.id(), new Route(ids, ids.size()));
        }
        return this;
    }

    /** Any other element. */
    public LaidHarness with(Element element) {
        elements.add(element);
        return this;
    }

    /** The harness. */
    public Harness harness() {
        return Harness.empty(TitleBlock.of("Test harness", "EX-TEST"), rules).withAll(elements);
    }

    /** The ways of its wires. */
    public Routes routes() {
        return new Routes(routes);
    }
}
