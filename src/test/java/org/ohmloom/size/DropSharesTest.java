package org.ohmloom.size;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.DesignRules;
import org.ohmloom.model.WireId;
import org.ohmloom.units.GaugeSystem;

@BesideOthers
class DropSharesTest {
    private static final double EXACT = 1e-12;

    @Test
    void aWireOfFourTimesTheCurrentMayLoseTwiceAsMuchPerMetre() {
        // 0.6 V allowed, 0.1 V in the fuse: 0.5 V for 1 m of 40 A and 3 m of 10 A.
        // Weights: 1 x sqrt(40) : 3 x sqrt(10) = 2 : 3, so 0.2 V for the first metre, 0.1 V for each of the three.
        DesignRules rules = new DesignRules(
                "road-vehicle", 12, 0.05, GaugeSystem.METRIC, "ISO 6722-1 class B", Optional.empty(), 30);
        FedLoad fed = new FedLoad(rules, 10, 0.6, 0.1, FedLoad.fuse(15))
                .trunk("W1", 1, 30)
                .wire("W2", 3);
        SizingInput input = fed.input(fed.largest());
        DropShares shares = new DropShares(input);
        DropShare trunk =
                shares.of(input.harness().wires().get(new WireId("W1"))).orElseThrow();
        DropShare branch =
                shares.of(input.harness().wires().get(new WireId("W2"))).orElseThrow();
        assertEquals(0.2, trunk.voltsPerMetre(), EXACT);
        assertEquals(0.005, trunk.ohmsPerMetre(), EXACT);
        assertEquals(0.1, branch.voltsPerMetre(), EXACT);
        assertEquals(0.5, 1 * trunk.voltsPerMetre() + 3 * branch.voltsPerMetre(), EXACT);
    }
}
