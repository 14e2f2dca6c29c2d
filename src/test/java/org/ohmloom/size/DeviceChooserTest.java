package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.ProtectiveDevice;
import org.ohmloom.size.protection.DeviceAllowance;
import org.ohmloom.tables.WireTables;
import org.ohmloom.units.Gauge;
import org.ohmloom.units.GaugeSystem;

@BesideOthers
class DeviceChooserTest {
    private final WireTables tables = WireTables.bundled();

    private static DesignRules road() {
        return new DesignRules(
                "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
    }

    private static DeviceChoice choose(FedLoad fed) {
        return new DeviceChooser(fed.input(fed.largest())).chooseAll().get(FedLoad.FUSE);
    }

    private DeviceAllowance allowance(String basis) {
        return DeviceAllowance.of(tables, tables.basis(basis), 12);
    }

    @Test
    void tenAmperesTakeFifteen() {
        // 10 A / (0.80 x 0.99 at 30 C) = 12.6 A; ISO 8820-3 type C: 10, 15. 0.75 mm2 carries 17.4 A (heat balance less
        // 10 %, 100 C
        // insulation, 30 C air).
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(30)).wire("W1", 1, Gauge.metric(0.75), false);
        DeviceChoice choice = choose(fed);
        assertEquals(OptionalDouble.of(15), choice.ratingAmps());
        assertTrue(choice.reason().contains("at least 12.6 A"), choice.reason());
        assertTrue(choice.reason().contains("W1 (0.75 mm2), may carry 17.4 A"), choice.reason());
    }

    @Test
    void aConductorTooThinForTheLoadsFuseLeavesTheChoiceOpen() {
        // 0.35 mm2 carries some 10 A, less than the 15 A the load needs
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(10)).wire("W1", 1, Gauge.metric(0.35), false);
        DeviceChoice choice = choose(fed);
        assertTrue(choice.ratingAmps().isEmpty());
        assertTrue(choice.reason().contains("too large"), choice.reason());
        assertFalse(new DeviceChooser(fed.input(fed.largest())).serves(FedLoad.FUSE), "10 A is below 12.5 A");
    }

    @Test
    void aRatingThatServesNeedsNoChange() {
        // 12.5 A to 17.4 A: 15 A serves, 10 A is too small for the load, 20 A too large for 0.75 mm2
        for (double rating : new double[] {10, 15, 20}) {
            FedLoad fed =
                    new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(rating)).wire("W1", 1, Gauge.metric(0.75), false);
            DeviceChooser chooser = new DeviceChooser(fed.input(fed.largest()));
            assertEquals(rating == 15, chooser.serves(FedLoad.FUSE));
            assertEquals(rating != 15, chooser.changes().containsKey(FedLoad.FUSE));
        }
    }

    @Test
    void wiresWithoutASizeDoNotLimitTheDevice() {
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, FedLoad.fuse(10)).wire("W1", 1);
        assertEquals(OptionalDouble.of(15), choose(fed).ratingAmps());
    }

    @Test
    void aSeriesWithoutATableKeepsARatingThatServes() {
        ProtectiveDevice invented =
                new ProtectiveDevice(ProtectiveDevice.Kind.BREAKER, "EX-BREAKER", 16, OptionalDouble.empty());
        FedLoad fed = new FedLoad(road(), 10, 0.6, 0.1, invented).wire("W1", 1, Gauge.metric(1.5), false);
        DeviceChoice choice = choose(fed);
        assertEquals(OptionalDouble.of(16), choice.ratingAmps());
        assertTrue(choice.reason().contains("no table lists the ratings of EX-BREAKER"), choice.reason());
    }

    @Test
    void smallCraftBelowFiftyVoltsMayTakeHalfAsMuchAgain() {
        // 33 CFR 183.455(c)(1). 16 AWG 105 C: 25 A x 1.5 = 37.5 A. 18 AWG in an engine space: 20 x 0.85 x 1.5 = 25.5 A
        DeviceAllowance craft = allowance("33-cfr-183");
        ProtectiveDevice fuse = FedLoad.fuse(10);
        assertTrue(craft.allows(fuse, 35, Gauge.awg(16), 25));
        assertFalse(craft.allows(fuse, 40, Gauge.awg(16), 25));
        assertTrue(craft.allows(fuse, 25, Gauge.awg(18), 17));
        assertFalse(craft.allows(fuse, 30, Gauge.awg(18), 17));
    }

    @Test
    void theNextStandardRatingAboveTheAmpacityIsAllowedWhereTheBasisSaysSo() {
        // ABYC E-11: 100 %, or the next size up to 150 %. Type C above 26 A: 30, then 35
        DeviceAllowance craft = allowance("abyc-e-11");
        ProtectiveDevice fuse = FedLoad.fuse(10);
        assertTrue(craft.allows(fuse, 30, Gauge.awg(14), 26));
        assertFalse(craft.allows(fuse, 35, Gauge.awg(14), 26), "below 39 A, but not the next one");
        // road vehicles: the ampacity itself is the end
        assertFalse(allowance("road-vehicle").allows(fuse, 30, Gauge.metric(1.5), 26));
    }

    @Test
    void aircraftPracticeHasItsOwnChart() {
        // FAA AC 43.13-1B Table 11-3, 20 AWG: breaker 7.5 A, fuse 5 A, whatever Table 11-9 would bear
        DeviceAllowance aircraft = allowance("ac-43.13-1b");
        ProtectiveDevice fuse = FedLoad.fuse(5);
        ProtectiveDevice breaker =
                new ProtectiveDevice(ProtectiveDevice.Kind.BREAKER, "SAE J553 Type I", 5, OptionalDouble.empty());
        assertTrue(aircraft.allows(fuse, 5, Gauge.awg(20), 9));
        assertFalse(aircraft.allows(fuse, 7.5, Gauge.awg(20), 9));
        assertTrue(aircraft.allows(breaker, 7.5, Gauge.awg(20), 9));
        assertFalse(aircraft.allows(breaker, 10, Gauge.awg(20), 12));
        assertTrue(aircraft.citation(fuse, 7.5, Gauge.awg(20), 9).text().contains("Table 11-3"));
        // between two rows the thinner one counts: 1/0 AWG has no breaker of its own, 2 AWG has 125 A
        assertTrue(aircraft.allows(breaker, 125, Gauge.awg(0), 192));
    }
}
