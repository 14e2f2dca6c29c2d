package org.ohmloom.ground.coupling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.model.Cable;
import org.ohmloom.model.CableId;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.ReturnRules;
import org.ohmloom.model.SignalClass;
import org.ohmloom.model.Wire;
import org.ohmloom.model.WireEnd;
import org.ohmloom.model.WireId;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.tables.WireTables;

/** A heater output beside a pressure signal, with everything a builder does against it. */
@BesideOthers
class CouplingStudyTest {
    private static final Path HEATER =
            Path.of("src/main/resources/org/ohmloom/review/examples/coupling-over-limit/triggers.harness.json");
    private static final WireTables TABLES = WireTables.bundled();

    private final Harness harness;

    CouplingStudyTest() throws Exception {
        harness = at(HarnessFiles.read(HEATER), OptionalDouble.empty());
    }

    @Test
    void anUnguardedSignalTakesTheChargeOfTheEdgeThroughItsSensor() {
        Coupling coupling = ofHeater(harness);
        assertEquals("W6", coupling.culprit().value());
        assertEquals("W9", coupling.victim().value());
        assertEquals(5, coupling.lengthMetres(), 1e-12);
        // A slow edge against R C: R C12 dV/dt with 10 ohm of the sensor beside 1 megohm of the input.
        double farads = 5
                * CouplingFormulas.pairFaradsPerMetre(
                        coupling.separationMetres(), conductorRadius("W6"), conductorRadius("W9"), 2.5);
        double ohms = 10.0 * 1e6 / (10 + 1e6);
        double slope = coupling.edge().volts() / 1e-6;
        // Strands lie looser than solid copper, so the conductors are nearer to each other than these.
        assertTrue(coupling.capacitiveVolts() > ohms * farads * slope);
        assertTrue(coupling.capacitiveVolts() < 1.4 * ohms * farads * slope);
        // 25 % of 1 % of 4 V.
        assertEquals(0.010, coupling.limitVolts().orElseThrow(), 1e-9);
        assertTrue(coupling.isOver());
    }

    /** Its return beside it takes away all but the difference of two mutual inductances. */
    @Test
    void withAHeightTheMagneticFieldCountsAsTheDifferenceOfSignalAndReturn() {
        Coupling coupling = ofHeater(atHeight(harness, 0.02));
        double outside = coupling.separationMetres();
        double near = CouplingFormulas.mutualHenriesPerMetre(0.02, 0.02, outside);
        assertTrue(coupling.inductiveVolts() > 0);
        assertTrue(coupling.inductiveVolts() < 5 * near * coupling.edge().amps() / 1e-6);
        assertEquals(coupling.capacitiveVolts() + coupling.inductiveVolts(), coupling.volts(), 1e-12);
    }

    @Test
    void twistingLeavesNoMoreThanOneHalfTwistOfTheMagneticField() {
        Harness high = atHeight(harness, 0.02);
        double loose = ofHeater(high).inductiveVolts();
        double twisted =
                ofHeater(cabled(high, Cable.Kind.TWISTED_PAIR, false, 0)).inductiveVolts();
        assertEquals(loose * 0.02 / 5, twisted, 1e-9 * loose);
    }

    @Test
    void aShieldAtOneEndStopsTheElectricFieldAndNotTheMagneticOne() {
        Harness high = atHeight(harness, 0.02);
        Coupling loose = ofHeater(high);
        Coupling shielded = ofHeater(cabled(high, Cable.Kind.MULTICORE, true, 1));
        assertEquals(0, shielded.capacitiveVolts(), 0);
        assertEquals(loose.inductiveVolts(), shielded.inductiveVolts(), 1e-9);
        Coupling floating = ofHeater(cabled(high, Cable.Kind.MULTICORE, true, 0));
        assertEquals(loose.capacitiveVolts(), floating.capacitiveVolts(), 1e-9);
        Coupling both = ofHeater(cabled(high, Cable.Kind.MULTICORE, true, 2));
        assertTrue(both.inductiveVolts() < loose.inductiveVolts());
    }

    /** What the heater's feed does; with a magnetic field its return W7 does as much of that. */
    private static Coupling ofHeater(Harness harness) {
        return Analyst.analyse(harness, TABLES, Cancel.NEVER).evidence().returns().couplings().stream()
                .filter(coupling -> coupling.culprit().value().equals("W6"))
                .findFirst()
                .orElseThrow();
    }

    private static double conductorRadius(String wire) {
        double areaMm2 = wire.equals("W6") ? 2.5 : 0.5;
        return Math.sqrt(areaMm2 / Math.PI) / 1000;
    }

    private static Harness atHeight(Harness harness, double metres) {
        return at(harness, OptionalDouble.of(metres));
    }

    /** The harness at a height above the chassis, or at none that is known. */
    private static Harness at(Harness harness, OptionalDouble heightMetres) {
        DesignRules rules = harness.rules();
        ReturnRules none = ReturnRules.NONE;
        return harness.withRules(new DesignRules(
                rules.basis(),
                rules.nominalVolts(),
                rules.allowedDropFraction(),
                rules.gaugeSystem(),
                rules.insulation(),
                rules.minimumGauge(),
                rules.ambientCelsius(),
                rules.sizing(),
                Optional.of(new ReturnRules(
                        none.sensorErrorFraction(),
                        none.unitGroundVolts(),
                        none.groundVolts(),
                        none.fieldTesla(),
                        none.fieldHertz(),
                        heightMetres,
                        none.couplingFraction(),
                        List.of()))));
    }

    /** Signal and return in one cable with a lay of 40 mm, its shield, if any, joined at so many ends. */
    private static Harness cabled(Harness harness, Cable.Kind kind, boolean shielded, int groundedEnds) {
        List<Element> elements = new ArrayList<>();
        Cable cable = new Cable(
                new CableId("C1"),
                "Signal cable",
                kind,
                shielded,
                OptionalDouble.empty(),
                kind == Cable.Kind.TWISTED_PAIR ? OptionalDouble.of(40) : OptionalDouble.empty(),
                Optional.empty(),
                Optional.empty());
        elements.add(cable);
        for (String id : List.of("W9", "W10")) {
            Wire core = harness.wires().get(new WireId(id));
            elements.add(core(core, core.id(), core.signalClass(), core.from(), core.to()));
        }
        if (shielded) {
            Wire core = harness.wires().get(new WireId("W10"));
            Wire shield = core(
                    core,
                    new WireId("W11"),
                    SignalClass.SHIELD,
                    groundedEnds > 1 ? core.from() : new WireEnd.Loose(),
                    groundedEnds > 0 ? core.to() : new WireEnd.Loose());
            elements.add(shield);
        }
        return harness.withAll(elements);
    }

    private static Wire core(Wire like, WireId id, SignalClass signalClass, WireEnd from, WireEnd to) {
        return new Wire(
                id,
                from,
                to,
                like.gauge(),
                like.family(),
                like.insulation(),
                like.colour(),
                OptionalDouble.of(5),
                signalClass,
                like.circuit(),
                Optional.of(new CableId("C1")),
                like.measuredOhms(),
                like.presentAmps(),
                like.existing(),
                like.assembly(),
                like.locked());
    }
}
