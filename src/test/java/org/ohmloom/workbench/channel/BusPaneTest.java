package org.ohmloom.workbench.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.IntStream;
import javax.swing.AbstractButton;
import javax.swing.JComboBox;
import javax.swing.JTable;
import org.junit.jupiter.api.Test;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.Session;
import org.ohmloom.graph.HarnessSketch;
import org.ohmloom.graph.NetworkBuilder;
import org.ohmloom.model.BusId;
import org.ohmloom.model.Channel;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.DataBus;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Pin;
import org.ohmloom.model.PinRole;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.signal.bus.wiring.BusProblem;
import org.ohmloom.signal.bus.wiring.BusWiringStudy;
import org.ohmloom.signal.channel.SensorChannel;
import org.ohmloom.signal.channel.SensorChannels;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.signal.wiring.WiringMade;
import org.ohmloom.tables.WireTables;
import org.ohmloom.workbench.OnEventThread;
import org.ohmloom.workbench.settings.Look;

/** A data bus of four units entered in its form, wired, and its messages changed by hand. */
class BusPaneTest {
    private static final OptionalDouble NONE = OptionalDouble.empty();

    private final List<Edit> answers = new ArrayList<>();

    /** U1 - 4 m - B2 - 6 m - U3, U2 half a metre and U4 6 m off B2; U1 reads a pressure and a temperature. */
    private static Harness four() {
        HarnessSketch sketch = new HarnessSketch()
                .segment("G1", "B1", "B2", 4)
                .segment("G2", "B2", "B3", 6)
                .segment("G3", "B2", "B4", 0.5)
                .segment("G4", "B2", "B5", 6)
                .component("B11", new Sensor(Sensor.Kind.RATIOMETRIC, 0.01, NONE))
                .component("B12", new Sensor(Sensor.Kind.THERMISTOR, 0, NONE))
                .component("U1", unit(List.of(channel("Oil", "A1", "B11"), channel("Coolant", "A2", "B12"))));
        for (String each : List.of("U2", "U3", "U4")) {
            sketch.component(each, unit(List.of()));
        }
        return sketch.at("U1", "B1")
                .at("U2", "B4")
                .at("U3", "B3")
                .at("U4", "B5")
                .harness();
    }

    private static Channel channel(String name, String pin, String sensor) {
        return new Channel(name, pin, new ComponentId(sensor), Optional.empty(), Optional.empty(), false);
    }

    private static ControlUnit unit(List<Channel> channels) {
        return new ControlUnit(
                        List.of(
                                Pin.of("H", PinRole.BUS_HIGH),
                                Pin.of("L", PinRole.BUS_LOW),
                                Pin.of("A1", PinRole.ANALOGUE_INPUT),
                                Pin.of("A2", PinRole.THERMISTOR_INPUT)),
                        0.1,
                        NONE,
                        NONE)
                .withChannels(channels);
    }

    private BusPane pane(Harness harness, DataBus bus) {
        List<SensorChannel> channels = SensorChannels.of(
                harness, NetworkBuilder.build(harness, HarnessSketch.state(), wire -> 0.1, WireTables.bundled()));
        return OnEventThread.get(() -> {
            Look.LIGHT.install();
            return new BusPane(harness, bus, channels, answer -> answer.ifPresent(answers::add));
        });
    }

    private static Component find(Container in, String name) {
        return search(in, name).orElseThrow(() -> new AssertionError("there is no " + name));
    }

    private static Optional<Component> search(Container in, String name) {
        for (Component each : in.getComponents()) {
            if (name.equals(each.getName())) {
                return Optional.of(each);
            }
            Optional<Component> found = each instanceof Container inner ? search(inner, name) : Optional.empty();
            if (found.isPresent()) {
                return found;
            }
        }
        return Optional.empty();
    }

    private static void press(BusPane pane, String name) {
        OnEventThread.run(() -> ((AbstractButton) find(pane, name)).doClick());
    }

    private static List<List<String>> cells(BusPane pane, String name) {
        return OnEventThread.get(() -> {
            JTable table = (JTable) find(pane, name);
            return IntStream.range(0, table.getRowCount())
                    .mapToObj(row -> IntStream.range(0, table.getColumnCount())
                            .mapToObj(column -> String.valueOf(table.getValueAt(row, column)))
                            .toList())
                    .toList();
        });
    }

    private static void type(BusPane pane, String table, int row, int column, String text) {
        OnEventThread.run(() -> ((JTable) find(pane, table)).setValueAt(text, row, column));
    }

    private DataBus entered(Harness harness) {
        return answers.get(answers.size() - 1).apply(harness).buses().get(new BusId("CAN1"));
    }

    @Test
    void aNewBusBeginsWithEveryUnitAndEndsInThoseFurthestApart() {
        Harness harness = four();
        BusPane pane = pane(harness, BusDialog.fresh(harness));
        assertEquals(
                List.of("U1", "U2", "U3", "U4"),
                cells(pane, "bus-nodes").stream().map(row -> row.get(0)).toList());
        OnEventThread.run(() -> ((JComboBox<?>) find(pane, "bus-kind"))
                .setSelectedIndex(WireTables.bundled().signals().limitSets().indexOf("sae-j1939-14")));
        press(pane, "bus-ok");
        DataBus bus = entered(harness);
        assertEquals(Optional.of("sae-j1939-14"), bus.limits());
        assertEquals(500_000, bus.bitsPerSecond());
        assertEquals(
                List.of("U3", "U4"),
                bus.terminations().stream()
                        .map(each -> each.insideUnit().orElseThrow().value())
                        .toList());
    }

    /** A set that lists one rate only, 250 kbit/s, gives the bus that one. */
    @Test
    void limitsThatListAnotherRateBringItWithThem() {
        Harness harness = four();
        BusPane pane = pane(harness, BusDialog.fresh(harness));
        OnEventThread.run(() -> ((JComboBox<?>) find(pane, "bus-kind"))
                .setSelectedIndex(WireTables.bundled().signals().limitSets().indexOf("sae-j1939-15")));
        press(pane, "bus-ok");
        assertEquals(250_000, entered(harness).bitsPerSecond());
    }

    @Test
    void theWiringJoinsAllNodesOfTheBusAndIsTakenBackWithIt() {
        Harness harness = four();
        press(pane(harness, BusDialog.fresh(harness)), "bus-ok");
        Session session = new Session(harness, Optional.empty());
        session.apply(answers.get(0));
        session.apply(WiringMade.of(session.current()).edit().orElseThrow());
        Joints joints = Joints.of(session.current());
        for (String unit : List.of("U2", "U3", "U4")) {
            assertTrue(
                    joints.with(new ComponentId("U1"), "H").contains(Joints.terminal(new ComponentId(unit), "H")),
                    unit);
        }
        assertTrue(session.current().wires().all().stream()
                .filter(wire -> wire.signalClass() == SignalClass.DATA_BUS)
                .map(Wire::cable)
                .allMatch(Optional::isPresent));
        session.undo();
        session.undo();
        assertEquals(harness, session.current());
    }

    @Test
    void nodesAreTakenOutAndMovedAndTheTerminationsFollowWhenAsked() {
        Harness harness = four();
        BusPane pane = pane(harness, BusDialog.fresh(harness));
        OnEventThread.run(() -> ((JTable) find(pane, "bus-nodes")).changeSelection(3, 0, false, false));
        press(pane, "bus-nodes-remove");
        assertTrue(pane.toldText().contains("not at the ends: the nodes furthest apart are U1, U3"), pane.toldText());
        press(pane, "bus-ends-both");
        OnEventThread.run(() -> ((JTable) find(pane, "bus-nodes")).changeSelection(2, 0, false, false));
        press(pane, "bus-nodes-up");
        press(pane, "bus-ok");
        DataBus bus = entered(harness);
        assertEquals(
                List.of("U1", "U3", "U2"),
                bus.nodes().stream().map(node -> node.unit().value()).toList());
        assertEquals(
                List.of("U1", "U3"),
                bus.terminations().stream()
                        .map(each -> each.insideUnit().orElseThrow().value())
                        .sorted()
                        .toList());
    }

    /** Both channels have usual rates; taken over from the packing, one is put under another identifier and sent every 20 ms. */
    @Test
    void whatThePackingProposesIsTakenOverAndChangedByHand() {
        Harness harness = four();
        BusPane pane = pane(harness, BusDialog.fresh(harness));
        press(pane, "bus-messages-propose");
        List<List<String>> proposed = cells(pane, "bus-messages");
        assertEquals(
                List.of("Coolant", "Oil"),
                proposed.stream().map(row -> row.get(5)).sorted().toList());
        type(pane, "bus-messages", 0, 2, "0x123");
        type(pane, "bus-messages", 0, 4, "20 ms");
        type(pane, "bus-messages", 1, 6, "1");
        assertTrue(pane.toldText().contains("too few for 1 values of 16 bits"), pane.toldText());
        assertFalse(OnEventThread.get(() -> ((AbstractButton) find(pane, "bus-ok")).isEnabled()));
        type(pane, "bus-messages", 1, 6, "");
        press(pane, "bus-ok");
        DataBus bus = entered(harness);
        assertEquals(0x123, bus.messages().get(0).identifier());
        assertEquals(0.02, bus.messages().get(0).periodSeconds(), 1e-12);
        assertEquals(2, bus.messages().get(1).dataBytes());
    }

    @Test
    void whatDoesNotFitIsSaidInOneSentence() {
        Harness harness = four();
        BusPane pane = pane(harness, BusDialog.fresh(harness));
        type(pane, "bus-nodes", 1, 0, "U9");
        assertTrue(pane.toldText().startsWith("“U9” is no unit"), pane.toldText());
        assertFalse(OnEventThread.get(() -> ((AbstractButton) find(pane, "bus-ok")).isEnabled()));
    }

    /** U1 and U2 in plugs of their own, and a pair X9 and X10 past U2 where the bus ends: a resistor may sit in any of them. */
    @Test
    void aTerminationSitsInAConnectorThatHasBothLines() {
        Harness harness = new HarnessSketch()
                .component("U1", unit(List.of()))
                .component("U2", unit(List.of()))
                .connector("X1", "U1", "1 H", "2 L", "3 A1")
                .connector("X2", "U2", "1 H", "2 L", "3 A1")
                .inline("X9", "X10", "a", "b", "c")
                .splice("S1", 0)
                .splice("S2", 0)
                .wire("W1", "X1.1", "S1", 0.1)
                .wire("W2", "S1", "X2.1", 0.1)
                .wire("W3", "S1", "X9.b", 0.1)
                .wire("W4", "X1.2", "S2", 0.1)
                .wire("W5", "S2", "X2.2", 0.1)
                .wire("W6", "S2", "X9.a", 0.1)
                .harness();
        BusPane pane = pane(harness, BusDialog.fresh(harness));
        List<String> offered = OnEventThread.get(() -> {
            JTable table = (JTable) find(pane, "bus-ends");
            JComboBox<?> box = (JComboBox<?>) table.prepareEditor(table.getCellEditor(1, 0), 1, 0);
            return IntStream.range(0, box.getItemCount())
                    .mapToObj(each -> String.valueOf(box.getItemAt(each)))
                    .toList();
        });
        assertTrue(
                offered.containsAll(List.of("X1.1 and X1.2", "X2.1 and X2.2", "X9.b and X9.a", "X10.b and X10.a")),
                offered.toString());
        type(pane, "bus-ends", 0, 0, "X1.1 and X1.2");
        type(pane, "bus-ends", 1, 0, "X10.b and X10.a");
        press(pane, "bus-ok");
        DataBus.Termination end = entered(harness).terminations().get(1);
        assertEquals("X10.b and X10.a", end.text());
        assertEquals(Optional.empty(), end.insideUnit());
        Harness after = answers.get(answers.size() - 1).apply(harness);
        WireTables tables = WireTables.bundled();
        assertEquals(
                List.of(),
                BusWiringStudy.of(
                                after,
                                NetworkBuilder.build(after, HarnessSketch.state(), wire -> 0.1, tables),
                                new TreeMap<>(),
                                tables.signals(),
                                after.buses().get(new BusId("CAN1")))
                        .problems()
                        .stream()
                        .map(BusProblem::kind)
                        .filter(kind -> kind == BusProblem.Kind.TERMINATION_COUNT
                                || kind == BusProblem.Kind.TERMINATION_NOT_AT_END)
                        .toList());
    }

    @Test
    void aBusWithoutANodeCannotBeEntered() {
        Harness none = new HarnessSketch().segment("G1", "B1", "B2", 4).harness();
        BusPane pane = pane(none, BusDialog.fresh(none));
        assertFalse(pane.okButton().isEnabled());
        assertTrue(pane.toldText().startsWith("No control unit is on the bus yet"), pane.toldText());
        press(pane, "bus-ok");
        assertEquals(List.of(), answers);
    }
}
