package org.ohmloom.model;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Identities in the order a person expects. */
class NaturalOrderTest {

    @Test
    void runsOfDigitsCompareByValueWhateverTheirZeros() {
        // W01 and W1 are the same number: plain text decides between them
        List<String> expected = List.of(
                "",
                "0",
                "00",
                "7",
                "W",
                "W01",
                "W1",
                "W1a",
                "W01b",
                "W2",
                "W010",
                "W10",
                "W11",
                "W99999999999999999999",
                "W100000000000000000000",
                "X1.2",
                "X1.10");
        for (int seed = 0; seed < 50; seed++) {
            List<String> shuffled = new ArrayList<>(expected);
            Collections.shuffle(shuffled, new Random(seed));
            shuffled.sort(NaturalOrder.INSTANCE);
            assertEquals(expected, shuffled);
        }
    }
}
