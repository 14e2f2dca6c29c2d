package org.ohmloom.signal.wiring;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Session;
import org.ohmloom.edit.TakeOut;
import org.ohmloom.graph.Routes;
import org.ohmloom.model.Cable;
import org.ohmloom.model.Channel;
import org.ohmloom.model.Component;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.ConnectorId;
import org.ohmloom.model.ControlUnit;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.signal.unit.ChannelPlan;
import org.ohmloom.signal.unit.Joints;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.words.Text;

/** The rescue pickup with every sensor wire taken out, planned and wired anew from its sensors and its two units. */
@BesideOthers
class WiringMadeTest {

    private static Harness bare() throws Exception {
        Harness harness = HarnessFiles.read(Path.of("examples", "rescue-pickup" + HarnessFiles.ENDING));
        Set<SignalClass> signals = EnumSet.of(
                SignalClass.REFERENCE_SUPPLY,
                SignalClass.REFERENCE_RETURN,
                SignalClass.ANALOGUE_SIGNAL,
                SignalClass.PULSE_SIGNAL,
                SignalClass.DATA_BUS);
        List<ElementId> gone = new ArrayList<>(harness.cables().ids());
        for (Wire wire : harness.wires().all()) {
            if (signals.contains(wire.signalClass())) {
                gone.add(wire.id());
                for (WireEnd end : List.of(wire.from(), wire.to())) {
                    if (end instanceof WireEnd.AtSplice at) {
                        gone.add(at.splice());
                    }
                }
            }
        }
        return new TakeOut(gone.stream().distinct().toList()).apply(harness);
    }

    private static Compound plannedAndWired(Harness bare) {
        var plan = ChannelPlan.of(bare).edit().orElseThrow();
        WiringMade made = WiringMade.of(plan.apply(bare));
        assertEquals(List.of(), made.problems());
        return new Compound(Text.of("Plan and wire"), List.of(plan, made.edit().orElseThrow()));
    }

    @Test
    void everyLineReachesItsPinAndAllIsOneStep() throws Exception {
        Harness bare = bare();
        Session session = new Session(bare, Optional.empty());
        session.apply(plannedAndWired(bare));
        Harness harness = session.current();
        Joints joints = Joints.of(harness);
        int lines = 0;
        int sensors = 0;
        for (Component unit : harness.components().all()) {
            if (unit.device() instanceof ControlUnit device) {
                for (Channel channel : device.channels()) {
                    if (harness.components().get(channel.component()).device() instanceof Sensor) {
                        sensors++;
                        lines += joined(joints, unit.id(), channel.pin(), channel.component(), Sensor.SIGNAL);
                        lines += channel.supplyPin().isEmpty()
                                ? 0
                                : joined(
                                        joints,
                                        unit.id(),
                                        channel.supplyPin().get(),
                                        channel.component(),
                                        Sensor.SUPPLY);
                        lines += joined(
                                joints,
                                unit.id(),
                                channel.returnPin().orElseThrow(),
                                channel.component(),
                                Sensor.RETURN);
                    }
                }
            }
        }
        assertEquals(10, sensors);
        assertEquals(27, lines, "7 sensors of three lines and 3 thermistors of two");
        session.undo();
        assertSame(bare, session.current());
    }

    private static int joined(Joints joints, ComponentId unit, String pin, ComponentId sensor, String terminal) {
        assertTrue(
                joints.with(unit, pin).contains(Joints.terminal(sensor, terminal)),
                sensor + "." + terminal + " to " + unit + "." + pin);
        return 1;
    }

    /** As it was wired by hand: the rear fuel pressure and wheel speed on the remote node in the bed, all others on the unit in the cab. */
    @Test
    void sensorsGoToTheUnitThatIsNear() throws Exception {
        Map<ComponentId, Set<String>> byUnit = new HashMap<>();
        ChannelPlan.of(bare())
                .channels()
                .forEach((unit, channels) ->
                        channels.forEach(channel -> byUnit.computeIfAbsent(unit, id -> new HashSet<>())
                                .add(channel.component().value())));
        assertEquals(Set.of("B2", "B9"), byUnit.get(new ComponentId("N1")));
        assertEquals(Set.of("B1", "B3", "B4", "B5", "B6", "B7", "B8", "B10"), byUnit.get(new ComponentId("U1")));
    }

    @Test
    void wiresAreRoutedNoCavityIsTakenTwiceAndNoConnectorHasTwoAlikeAmongThem() throws Exception {
        Harness bare = bare();
        Harness harness = plannedAndWired(bare).apply(bare);
        Set<WireId> before = bare.wires().ids();
        Routes routes = Routes.of(harness);
        Map<ConnectorId, Set<String>> colours = new HashMap<>();
        Set<WireEnd> cavities = new HashSet<>();
        int made = 0;
        for (Wire wire : harness.wires().all()) {
            if (!before.contains(wire.id())) {
                made++;
                assertTrue(routes.of(wire.id()).isPresent(), wire.id() + " has a way");
                for (WireEnd end : List.of(wire.from(), wire.to())) {
                    if (end instanceof WireEnd.AtCavity at) {
                        assertTrue(cavities.add(end), end.text());
                        String colour = wire.colour().orElseThrow().text();
                        assertTrue(
                                colours.computeIfAbsent(at.connector(), id -> new HashSet<>())
                                        .add(colour),
                                at.connector() + " has " + colour + " twice");
                    }
                }
            }
        }
        assertTrue(made >= 40, made + " wires");
        assertEquals(
                3,
                harness.cables().all().stream()
                        .filter(cable -> cable.kind() == Cable.Kind.TWISTED_PAIR)
                        .count(),
                "two Hall sensors and the data bus");
    }

    /** A variable-reluctance sensor gets a shielded pair; its drain hangs on the return at the unit's side and is cut back at the sensor. */
    @Test
    void aShieldIsGroundedAtOneEnd() throws Exception {
        Harness bare = bare();
        Component hall = bare.components().get(new ComponentId("B8"));
        Sensor sensor = (Sensor) hall.device();
        Harness changed = bare.with(hall.withDevice(
                new Sensor(Sensor.Kind.VARIABLE_RELUCTANCE, 0, sensor.signalOhms(), sensor.measurement())));
        Harness harness = plannedAndWired(changed).apply(changed);
        List<Wire> drains = harness.wires().all().stream()
                .filter(wire -> wire.signalClass() == SignalClass.SHIELD)
                .toList();
        assertEquals(1, drains.size());
        assertTrue(drains.get(0).from() instanceof WireEnd.AtSplice);
        assertTrue(drains.get(0).to() instanceof WireEnd.Loose);
        assertTrue(harness.cables().get(drains.get(0).cable().orElseThrow()).shielded());
    }
}
