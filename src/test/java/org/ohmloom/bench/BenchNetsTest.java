package org.ohmloom.bench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.model.Wire;
import org.ohmloom.tables.PullForce;
import org.ohmloom.units.GaugeSystem;

class BenchNetsTest {
    private static final double EXACT = 1e-9;

    private static BenchNet.Path path(List<BenchNet> nets, String from, String to) {
        for (BenchNet net : nets) {
            if (net.ends().get(0).text().equals(from)) {
                for (Map.Entry<BenchEnd, BenchNet.Path> each : net.paths().entrySet()) {
                    if (each.getKey().text().equals(to)) {
                        return each.getValue();
                    }
                }
            }
        }
        throw new AssertionError("no net from " + from + " to " + to);
    }

    /** Resistances of ISO 6722-1 at 20 C: 1.5 mm2 12.7, 2.5 mm2 7.6, 4 mm2 4.71 milliohm per metre. */
    @Test
    void theTeachingExampleMeasuresWhatItsTableRowsSay() {
        List<BenchNet> nets =
                BenchNets.of(AnalysedExamples.of("teaching").evidence().bench());

        // W8: 0.5 m of 4 mm2 with a terminal at each end.
        BenchNet.Path ground = path(nets, "BT1.-, terminal of W8", "G1, terminal of W8");
        assertEquals(0.5 * 4.71e-3, ground.wireOhms().orElseThrow(), EXACT);
        assertEquals(0, ground.jointOhms(), EXACT);
        // W3, 1 m of 2.5 mm2, the splice (0.5 milliohm for each of the two wires), W5, 1.5 m of 1.5 mm2, a contact of
        // 3.
        BenchNet.Path pump = path(nets, "S1.2, terminal of W3", "X2.1");
        assertEquals(1 * 7.6e-3 + 1.5 * 12.7e-3, pump.wireOhms().orElseThrow(), EXACT);
        assertEquals(2 * 0.5e-3 + 3e-3, pump.jointOhms(), EXACT);
        // Six nets of one wire or more: two wires on one ground point are two nets on the bench.
        assertEquals(6, nets.size());
    }

    @Test
    void everyWireToBeMadeIsInOneNetAndEveryEndInOne() {
        for (String example : List.of("star-ground", "workboat")) {
            var analysis = AnalysedExamples.of(example);
            List<BenchNet> nets = BenchNets.of(analysis.evidence().bench());
            List<String> wires = nets.stream()
                    .flatMap(net -> net.wires().stream())
                    .map(wire -> wire.id().value())
                    .sorted()
                    .toList();
            List<String> made = analysis.harness().wires().all().stream()
                    .filter(wire -> !wire.existing())
                    .map((Wire wire) -> wire.id().value())
                    .sorted()
                    .toList();
            assertEquals(made, wires);
            List<String> ends = nets.stream()
                    .flatMap(net -> net.ends().stream())
                    .map(BenchEnd::text)
                    .toList();
            assertEquals(ends.size(), new TreeSet<>(ends).size());
            assertTrue(nets.stream()
                    .allMatch(
                            net -> net.paths().size() == Math.max(0, net.ends().size() - 1)));
        }
    }

    /** Wheatstone's bridge: 1, 2, 3, 4 ohm in its arms, 5 across: 2.3889 ohm between the far corners (by delta and star). */
    @Test
    void aBridgeOfFiveResistancesMeasuresWhatDeltaAndStarGive() {
        NetOhms bridge = new NetOhms(4);
        bridge.add(0, 1, 1);
        bridge.add(0, 2, 2);
        bridge.add(1, 3, 3);
        bridge.add(2, 3, 4);
        bridge.add(1, 2, 5);
        // Delta 1, 2, 5 to a star: 1*2/8, 1*5/8, 2*5/8; then (0.625 + 3) beside (1.25 + 4), and 0.25 before both.
        double expected = 0.25 + 1 / (1 / (0.625 + 3) + 1 / (1.25 + 4));

        assertEquals(expected, bridge.fromFirst()[3], 1e-12);
    }

    @Test
    void twoEqualWiresBesideEachOtherMeasureHalf() {
        NetOhms pair = new NetOhms(2);
        pair.add(0, 1, 0.2);
        pair.add(1, 0, 0.2);

        assertEquals(0.1, pair.fromFirst()[1], 1e-12);
    }

    /** UL 486A as quoted by terminal makers: 18 AWG 20 lbf, 12 AWG 70 lbf; one pound-force is 4.448222 N. */
    @Test
    void pullForcesAreThoseOfTheSetThatIsNamed() {
        Map<String, Double> newtons = AnalysedExamples.of("teaching").evidence().tables().pullForces().stream()
                .filter(force -> force.set().equals(CrimpFamily.set(GaugeSystem.AWG)))
                .collect(Collectors.toMap((PullForce force) -> force.gauge().text(), force -> force.forceNewtons()
                        .value()));
        assertEquals(20 * 4.448222, newtons.get("18 AWG"), 0.5);
        assertEquals(70 * 4.448222, newtons.get("12 AWG"), 0.5);
        assertEquals(300 * 4.448222, newtons.get("2/0 AWG"), 1);
    }

    @Test
    void everyCrimpOfTheTeachingExampleIsInOneFamily() {
        List<CrimpFamily> families =
                CrimpFamily.of(AnalysedExamples.of("teaching").evidence().bench());

        // Four cavities, and terminals: W1 and W8 two each, W2 two, W3 one, W6 and W7 one each.
        assertEquals(4 + 9, families.stream().mapToInt(CrimpFamily::crimps).sum());
        assertEquals(
                150,
                families.stream()
                        .filter(family -> family.terminal().equals("CT-T"))
                        .findFirst()
                        .orElseThrow()
                        .force()
                        .orElseThrow()
                        .forceNewtons()
                        .value());
    }
}
