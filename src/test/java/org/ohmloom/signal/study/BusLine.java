package org.ohmloom.signal.study;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.BusId;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.tables.WireTables;

/** Bus CAN1 of U1, U2 and U3: U1 - splice - U3, U2 off the splice. */
final class BusLine {
    static final WireTables TABLES = WireTables.bundled();

    private BusLine() {}

    /** Both lines alike, of these lengths, m. */
    static HarnessSketch of(double first, double second, double stub) {
        HarnessSketch sketch = new HarnessSketch().splice("SH", 0).splice("SL", 0);
        List<Pin> pins = List.of(Pin.of("H", PinRole.BUS_HIGH), Pin.of("L", PinRole.BUS_LOW));
        for (String unit : List.of("U1", "U2", "U3")) {
            sketch.component(unit, new ControlUnit(pins, 0, OptionalDouble.empty(), OptionalDouble.empty()));
        }
        for (String line : List.of("H", "L")) {
            sketch.run("A" + line, "U1." + line, "S" + line, first);
            sketch.run("B" + line, "S" + line, "U3." + line, second);
            sketch.run("C" + line, "S" + line, "U2." + line, stub);
        }
        return sketch;
    }

    static DataBus bus(String limits, double bitsPerSecond, DataBus.Termination... terminations) {
        List<DataBus.Node> nodes = List.of("U1", "U2", "U3").stream()
                .map(unit -> DataBus.Node.of(new ComponentId(unit), "H", "L"))
                .toList();
        return new DataBus(
                new BusId("CAN1"),
                "Bus",
                bitsPerSecond,
                11,
                Optional.of(limits),
                nodes,
                List.of(terminations),
                Optional.empty(),
                List.of());
    }

    static DataBus.Termination inside(String unit, double ohms) {
        ComponentId id = new ComponentId(unit);
        return new DataBus.Termination(
                ohms, new WireEnd.AtTerminal(id, "H"), new WireEnd.AtTerminal(id, "L"), Optional.empty());
    }

    static SignalStudy study(Harness harness) {
        SortedMap<WireId, Double> lengths = new TreeMap<>();
        harness.wires()
                .all()
                .forEach(wire -> lengths.put(wire.id(), wire.lengthMetres().orElseThrow()));
        return SignalStudy.of(
                harness,
                NetworkBuilder.build(
                        harness,
                        HarnessSketch.state(),
                        wire -> wire.measuredOhms().orElse(0.1),
                        TABLES),
                lengths,
                TABLES.signals());
    }

    static BusReading reading(Harness harness) {
        return study(harness).buses().get(0);
    }
}
