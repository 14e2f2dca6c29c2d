package org.ohmloom.analysis;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.ohmloom.model.Battery;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Draw;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Load;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.OperatingState.EngineMode;
import org.ohmloom.model.Setting;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.SizingRules;
import org.ohmloom.model.SizingRules.StockSize;
import org.ohmloom.model.Splice;
import org.ohmloom.model.SpliceId;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

/**
 * A battery B, splices and loads of constant current that go back to the battery by wires of their own or shared ones;
 * wires without a size unless one is given. Everything is invented.
 */
final class OpenFeeds {
    private Harness harness;
    private OperatingState state = OperatingState.of("run", "Run", EngineMode.OFF);

    /** Nothing yet but a battery of 12.6 V; sizes of the stock only, all of the family when there are none. */
    OpenFeeds(SizingRules sizing) {
        harness = Harness.empty(
                        TitleBlock.of("Open feeds", "EX-OPEN"),
                        new DesignRules(
                                "road-vehicle",
                                12,
                                0.05,
                                GaugeSystem.METRIC,
                                "ISO 6722-1 class B",
                                Optional.empty(),
                                25,
                                Optional.of(sizing),
                                Optional.empty()))
                .with(Component.of("B", "Battery", new Battery(12.6, 0.01, 60)));
    }

    /** Sizes in stock, by area in mm2. */
    static SizingRules stock(double... areasMm2) {
        List<StockSize> sizes = Arrays.stream(areasMm2)
                .mapToObj(area -> new StockSize(Gauge.metric(area), OptionalDouble.empty()))
                .toList();
        return rules(sizes, false);
    }

    static SizingRules rules(List<StockSize> stock, boolean oneSizePerCircuit) {
        return new SizingRules(
                Optional.empty(),
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                stock,
                oneSizePerCircuit,
                OptionalDouble.empty());
    }

    OpenFeeds splice(String id) {
        harness = harness.with(
                new Splice(new SpliceId(id), id, 0, Optional.empty(), Optional.empty(), false, Optional.empty()));
        return this;
    }

    OpenFeeds load(String id, double amps, double limitVolts) {
        Load plain = Load.of(new Draw.ConstantCurrent(amps, 12));
        harness = harness.with(
                Component.of(id, id, new Load(plain.draw(), plain.control(), OptionalDouble.of(limitVolts))));
        state = state.with(new ComponentId(id), Setting.duty(1));
        return this;
    }

    /** A wire between {@code B.+}, {@code S1} or {@code L1.-} without a size. */
    OpenFeeds wire(String id, String from, String to, double lengthMetres) {
        return wire(id, from, to, lengthMetres, Optional.empty(), Optional.empty(), false, false);
    }

    OpenFeeds wire(
            String id,
            String from,
            String to,
            double lengthMetres,
            Optional<Gauge> gauge,
            Optional<String> circuit,
            boolean existing,
            boolean locked) {
        Wire plain = Wire.of(id, end(from), end(to), SignalClass.FEED);
        harness = harness.with(new Wire(
                plain.id(),
                plain.from(),
                plain.to(),
                gauge,
                plain.family(),
                plain.insulation(),
                plain.colour(),
                OptionalDouble.of(lengthMetres),
                plain.signalClass(),
                circuit,
                plain.cable(),
                plain.measuredOhms(),
                plain.presentAmps(),
                existing,
                plain.assembly(),
                locked));
        return this;
    }

    private static WireEnd end(String text) {
        String[] words = text.split("\\.");
        return words.length == 1
                ? new WireEnd.AtSplice(new SpliceId(text))
                : new WireEnd.AtTerminal(new ComponentId(words[0]), words[1]);
    }

    Harness harness() {
        return harness.with(state);
    }

    /** The same with sizes for wires, by id and area in mm2 in turn. */
    static Harness sized(Harness harness, List<Wire> wires, double[] areasMm2) {
        return harness.withAll(IntStream.range(0, areasMm2.length)
                .mapToObj(k -> wires.get(k).withGauge(Optional.of(Gauge.metric(areasMm2[k]))))
                .toList());
    }

    /** Wires without a size. */
    static List<Wire> open(Harness harness) {
        return Stream.of(harness)
                .flatMap(each -> each.wires().all().stream())
                .filter(wire -> wire.gauge().isEmpty())
                .toList();
    }
}
