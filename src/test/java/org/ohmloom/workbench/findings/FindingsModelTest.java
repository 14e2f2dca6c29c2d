package org.ohmloom.workbench.findings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.words.Text;
import org.ohmloom.workbench.desk.Results;

class FindingsModelTest {

    private static final List<Finding> FINDINGS =
            List.of(finding("a", Severity.NOTE), finding("b", Severity.ERROR), finding("c", Severity.NOTE));

    @Test
    void findingsStandBelowTheHeadingOfTheirSeverity() {
        List<FindingsModel.Row> rows = FindingsModel.rows(standing(), FindingsModel.all());
        assertEquals(5, rows.size());
        assertTrue(rows.get(0).isHeading());
        assertEquals(Severity.ERROR, rows.get(0).severity());
        assertEquals(2, rows.get(2).count());
        assertEquals("c", rows.get(4).finding().orElseThrow().rule());
    }

    @Test
    void aSeverityThatIsFilteredOutIsNotThere() {
        List<FindingsModel.Row> rows = FindingsModel.rows(standing(), EnumSet.of(Severity.ERROR, Severity.WARNING));
        assertEquals(2, rows.size());
    }

    private static Finding finding(String rule, Severity severity) {
        return new Finding(
                rule,
                severity,
                Text.of("message of " + rule),
                List.of("W1"),
                List.of("W1"),
                Text.of("common practice, no source"),
                Map.of(),
                Optional.empty(),
                Optional.empty());
    }

    private static List<Results.Standing> standing() {
        return FINDINGS.stream()
                .map(finding -> new Results.Standing(finding, false))
                .toList();
    }
}
