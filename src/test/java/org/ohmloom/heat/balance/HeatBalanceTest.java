package org.ohmloom.heat.balance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeatBalanceTest {
    /** The balance is to be found to a hundredth of a kelvin. */
    private static final double KELVIN = 0.01;

    private static final double EXACT = 1e-9;

    private final RoundWire wire = new RoundWire(7.6e-3, 2.27, 2.2, 3.6, RoundWire.USUAL_INSULATION);
    private final OpenAir room = OpenAir.seaLevel(30);

    @Test
    void whatTheConductorMakesIsWhatTheSurfaceSheds() {
        for (double amps : new double[] {1, 10, 30, 60}) {
            HeatBalance balance = HeatBalance.bare(wire, room);
            SteadyState state = balance.at(amps);
            double made = amps * amps * 7.6e-3 * (234.5 + state.celsius()) / 254.5;
            assertEquals(made, balance.surface().wattsPerMetre(state.surfaceCelsius(), room), 1e-4 * made);
            assertEquals(state.celsius(), state.surfaceCelsius() + made * wire.insulationKelvinMetresPerWatt(), KELVIN);
        }
    }

    @Test
    void theCurrentForATemperatureBringsThatTemperature() {
        HeatBalance balance = HeatBalance.bare(wire, room);
        for (double limit : new double[] {40, 70, 105, 200}) {
            assertEquals(limit, balance.at(balance.ampacityAmps(limit)).celsius(), KELVIN);
        }
        assertEquals(0, balance.ampacityAmps(30), EXACT);
        assertEquals(30, balance.at(0).celsius(), EXACT);
    }

    @Test
    void thickerInsulationCoolsAThinWire() {
        // critical radius k/h = 0.17/15 = 11 mm: every vehicle wire is below it
        RoundWire thick = new RoundWire(7.6e-3, 2.27, 2.2, 5, RoundWire.USUAL_INSULATION);
        assertTrue(HeatBalance.bare(thick, room).at(40).celsius()
                < HeatBalance.bare(wire, room).at(40).celsius());
    }

    @Test
    void thinAirCarriesLessHeat() {
        // ISO 2533: 5000 m has 54 020 Pa
        assertEquals(54_020, OpenAir.pressurePascals(5000), 30);
        assertEquals(22_632, OpenAir.pressurePascals(11_000), 30);
        // the aircraft chart against this is in the validation page
        double above = HeatBalance.bare(wire, OpenAir.at(30, 11_000)).ampacityAmps(105);
        double half = HeatBalance.bare(wire, OpenAir.at(30, 5000)).ampacityAmps(105);
        assertTrue(above < half && half < HeatBalance.bare(wire, room).ampacityAmps(105));
    }

    @Test
    void aCurrentNoWireCanShedRunsAway() {
        SteadyState state = HeatBalance.bare(wire, room).at(400);
        assertTrue(state.runaway());
        assertEquals(RoundWire.MELTING_CELSIUS, state.celsius(), EXACT);
        assertFalse(HeatBalance.bare(wire, room).at(60).runaway());
    }

    @Test
    void aSleeveWithAirInsideWarmsAThickCableAndShinyMetalWarmsAll() {
        Cover conduit = new Cover(2, 0.05, 0.5, 0.25, 0.9);
        HeatBalance covered = new HeatBalance(wire, conduit, room);
        assertEquals(105, covered.at(covered.ampacityAmps(105)).celsius(), KELVIN);
        Cover foil = new Cover(0, 1, 0.05, 200, 0.1);
        assertTrue(new HeatBalance(wire, foil, room).at(30).celsius()
                > HeatBalance.bare(wire, room).at(30).celsius() + 5);
    }

    @Test
    void aBundleOfOneIsTheWireAlone() {
        BundleSection alone = new BundleSection(List.of(new Bundled(wire, 30)), Cover.NONE, room);
        assertEquals(
                HeatBalance.bare(wire, room).at(30).celsius(),
                alone.settle().get(0).celsius(),
                KELVIN);
    }

    @Test
    void aBundleOfMixedSizesWarmsItsIdleWiresToo() {
        RoundWire thin = new RoundWire(37.1e-3, 0.465, 0.9, 1.7, RoundWire.USUAL_INSULATION);
        BundleSection bundle = new BundleSection(
                List.of(new Bundled(wire, 25), new Bundled(thin, 0), new Bundled(thin, 4), new Bundled(wire, 0)),
                Cover.NONE,
                room);
        List<SteadyState> states = bundle.settle();
        double idle = states.get(1).celsius();
        assertTrue(idle > 35, "the idle wire lies between warm ones: " + idle);
        // the thicker idle wire reaches further out into the bundle
        assertTrue(states.get(3).celsius() <= idle && states.get(3).celsius() > 35);
        assertTrue(states.get(0).celsius() > idle);
        // energy: what the wires make leaves through the bundle's surface
        double made =
                states.stream().mapToDouble(SteadyState::heatWattsPerMetre).sum();
        assertEquals(
                made,
                Cover.NONE.over(bundle.diameterMm()).wattsPerMetre(states.get(0).surfaceCelsius(), room),
                1e-3 * made);
    }

    @Test
    void aBundleThatCannotShedItsHeatIsSaidToRunAway() {
        List<Bundled> many = Collections.nCopies(30, new Bundled(wire, 80));
        assertTrue(new BundleSection(many, Cover.NONE, room).settle().stream().allMatch(SteadyState::runaway));
    }

    @Test
    void theFactorForEqualWiresIsThatOfTheWholeSection() {
        // ten wires, 40 % of total capacity: four carry the current, six none
        double factor = BundleFactor.of(wire, room, 105, 10, 0.4);
        double amps = factor * HeatBalance.bare(wire, room).ampacityAmps(105);
        List<Bundled> wires = new ArrayList<>(Collections.nCopies(4, new Bundled(wire, amps)));
        wires.addAll(Collections.nCopies(6, new Bundled(wire, 0)));
        double hottest = new BundleSection(wires, Cover.NONE, room)
                .settle().stream().mapToDouble(SteadyState::celsius).max().orElseThrow();
        assertEquals(105, hottest, KELVIN);
    }
}
