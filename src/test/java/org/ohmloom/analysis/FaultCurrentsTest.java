package org.ohmloom.analysis;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.WireId;
import org.ohmloom.review.Rule;
import org.ohmloom.review.RuleExamples;
import org.ohmloom.review.Rules;
import org.ohmloom.size.protection.DeviceProtection;
import org.ohmloom.size.protection.ProtectionCurves;
import org.ohmloom.size.protection.ProtectionResults;
import org.ohmloom.tables.WireTables;

/** Fault currents the study solves in the network, against the loop worked out by hand. */
@BesideOthers
class FaultCurrentsTest {

    /** The hand calculation takes listed resistances to three digits. */
    private static final double THREE_DIGITS = 5e-3;

    private static ProtectionResults results(String rule, boolean triggers) {
        Rule found = Rules.ALL.stream()
                .filter(each -> each.info().id().equals(rule))
                .findFirst()
                .orElseThrow();
        return Analyst.analyse(
                        triggers ? RuleExamples.triggers(found.info()) : RuleExamples.nearly(found.info()),
                        WireTables.bundled(),
                        Cancel.NEVER)
                .evidence()
                .protection();
    }

    private static DeviceProtection fuse(ProtectionResults results) {
        return results.of(new ComponentId("F1")).orElseThrow();
    }

    @Test
    void theSmallestFaultIsTheLoopWithAColdDischargedBatteryAndHotConductors() {
        // 0.95 x 12.6 V = 11.97 V; battery 2.5 x 5 mohm = 12.5 mohm; 0.1 m of 4 mm2 and 2 x 8 m of 1 mm2 at 100 C:
        // (0.1 x 4.71 + 16 x 18.5) mohm x 334.5/254.5 = 389.7 mohm; fuse 7.7 mohm: 11.97/0.4099 = 29.2 A
        double ohms = (0.1 * 4.71e-3 + 16 * 18.5e-3) * 334.5 / 254.5 + 0.0125 + 0.0077;
        DeviceProtection fuse = fuse(results("fault-not-cleared", false));
        double amps = fuse.minimumFault().orElseThrow().deviceAmps();
        assertEquals(11.97 / ohms, amps, THREE_DIGITS * amps);
        // 292 % of 10 A: the row at 200 % opens within 5 s, the time asked where the harness does not say
        assertEquals(OptionalDouble.of(5), fuse.openSeconds());
        assertEquals(5, fuse.askedSeconds());
    }

    @Test
    void theLargestFaultIsTheLoopAtTheDeviceWithAFullBatteryAndCoolConductors() {
        // 12.6 V / (5 mohm + 0.1 m x 4.71 mohm/m + 7.7 mohm) = 956 A
        double ohms = 0.005 + 0.1 * 4.71e-3 + 0.0077;
        double amps = fuse(results("fault-not-cleared", false))
                .maximumFault()
                .orElseThrow()
                .deviceAmps();
        assertEquals(12.6 / ohms, amps, THREE_DIGITS * amps);
    }

    @Test
    void aThirtyTwoVoltFuseFailsAtFortyEightVolts() {
        assertTrue(results("voltage-rating-exceeded", true).voltages().stream()
                .anyMatch(rating -> rating.element().equals("F1") && !rating.suits()));
        assertTrue(results("voltage-rating-exceeded", false).voltages().stream().allMatch(rating -> rating.suits()));
    }

    @Test
    void aFaultBehindAnElectronicLimitIsCappedAtIt() {
        ProtectionResults results = results("fuse-behind-limit", true);
        DeviceProtection behind = results.of(new ComponentId("F2")).orElseThrow();
        assertEquals(12, behind.minimumFault().orElseThrow().deviceAmps());
        assertEquals(12, results.outputs().get(0).cappedAmps());
    }

    @Test
    void theCurvesOfAWireHoldItsBandItsLimitAndItsFaults() {
        ProtectionCurves curves =
                results("fault-not-cleared", false).curves(new WireId("W2")).get(0);
        assertEquals(13.5, curves.foreverAmps().orElseThrow(), 1e-9);
        assertTrue(curves.bandLongest().size() >= 5);
        assertTrue(curves.conductorLimit().size() > 10);
        assertTrue(curves.minimumFaultAmps().orElseThrow()
                < curves.maximumFaultAmps().orElseThrow());
    }
}
