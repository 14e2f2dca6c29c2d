package org.ohmloom.workbench.lists;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.StateId;
import org.ohmloom.workbench.desk.Readout;

/** The numbers of the list of wires. */
class WireSheetTest {

    private static final double TWO_DECIMALS = 0.5e-2;

    private static double celsius(String wire, Optional<StateId> state) {
        Analysis analysis = AnalysedExamples.of("teaching");
        return new WireSheet()
                .rows(new Readout(analysis.harness(), Optional.of(analysis), state)).stream()
                        .filter(row -> row.wire().id().value().equals(wire))
                        .findFirst()
                        .orElseThrow()
                        .temperature()
                        .number()
                        .orElseThrow();
    }

    /** Note N-4 of the example: with heater and pump on W4 carries 4.9810 A at 23.16, W5 3 A at 21.22 degrees. */
    @ParameterizedTest
    @CsvSource({"W4, 23.16", "W5, 21.22", "W2, 23.27"})
    void aTemperatureIsThatOfTheStateShown(String wire, double byHandCelsius) {
        assertEquals(byHandCelsius, celsius(wire, Optional.of(new StateId("both"))), TWO_DECIMALS);
    }

    /** The heater alone takes 5.0495 A, more than beside the pump. */
    @Test
    void ofAllStatesTheHottestIsShown() {
        double alone = celsius("W4", Optional.of(new StateId("heater-only")));
        assertEquals(23.24, alone, TWO_DECIMALS);
        assertEquals(alone, celsius("W4", Optional.empty()), 1e-9);
    }
}
