package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.model.ComponentId;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Note;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.Part;
import org.ohmloom.model.Sensor;
import org.ohmloom.model.StateId;
import org.ohmloom.model.WireEnd;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Rule;
import org.ohmloom.review.Rules;
import org.ohmloom.review.Severity;
import org.ohmloom.solve.IslandStatus;
import org.ohmloom.solve.LoadVolts;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;

/** The example harnesses: each opens, is written back byte for byte, says it is invented, and fares in the
 * review as it promises. */
class ExamplesTest {

    /** The teaching notes print currents and voltages to four decimals. */
    private static final double FOUR_DECIMALS = 0.5e-4;

    private static final Path FOLDER = Path.of("examples");

    private static Path file(String name) {
        return FOLDER.resolve(name + HarnessFiles.ENDING);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void an_example_is_written_back_byte_for_byte(String name) throws Exception {
        Harness harness = HarnessFiles.read(file(name));
        assertEquals(Files.readString(file(name)), HarnessText.write(harness));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void an_example_says_that_its_scenario_and_parts_are_invented(String name) throws Exception {
        Harness harness = HarnessFiles.read(file(name));
        assertTrue(harness.notes().all().stream().anyMatch(note -> note.text().startsWith("Invented scenario")));
        for (Part part : harness.parts().all()) {
            assertEquals("Example", part.maker());
            assertTrue(part.id().value().startsWith("EX-"), part.id()::value);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "faults", "star-ground"})
    void whatever_a_wire_ends_on_has_its_place_on_the_harness(String name) throws Exception {
        Harness harness = HarnessFiles.read(file(name));
        harness.connectors().all().forEach(each -> assertTrue(each.at().isPresent(), each.id()::value));
        harness.grounds().all().forEach(each -> assertTrue(each.at().isPresent(), each.id()::value));
        harness.splices().all().forEach(each -> assertTrue(each.place().isPresent(), each.id()::value));
        harness.wires().all().stream()
                .flatMap(wire -> wire.ends().stream())
                .filter(WireEnd.AtTerminal.class::isInstance)
                .map(end -> ((WireEnd.AtTerminal) end).component())
                .forEach(id -> assertTrue(harness.components().get(id).at().isPresent(), id::value));
    }

    @Test
    void the_rescue_pickup_is_as_large_as_the_job_it_stands_for() throws Exception {
        Harness harness = HarnessFiles.read(file("rescue-pickup"));
        assertTrue(harness.wires().all().size() >= 80);
        assertEquals(4, harness.grounds().all().size());
        assertEquals(6, harness.states().all().size());
        long sensors = harness.components().all().stream()
                .filter(component -> component.device() instanceof Sensor)
                .count();
        assertEquals(10, sensors);
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup", "workboat", "star-ground"})
    void every_state_of_a_sound_example_is_solved_and_no_finding_is_an_error(String name) throws Exception {
        Analysis analysis = analyse(name);
        for (OperatingState state : analysis.states()) {
            assertEquals(
                    IslandStatus.SOLVED,
                    analysis.solution(state.id()).orElseThrow().status(),
                    () -> state.id().value());
        }
        assertEquals(List.of(), messages(analysis, Severity.ERROR));
        assertEquals(List.of(), messages(analysis, Severity.WARNING));
    }

    @Test
    void the_star_ground_example_is_clean_without_even_a_note() throws Exception {
        assertEquals(List.of(), analyse("star-ground").findings());
    }

    @Test
    void the_faults_example_fires_every_rule() throws Exception {
        Set<String> fired =
                analyse("faults").findings().stream().map(Finding::rule).collect(Collectors.toCollection(TreeSet::new));
        Set<String> all =
                Rules.ALL.stream().map(rule -> rule.info().id()).collect(Collectors.toCollection(TreeSet::new));
        assertEquals(all, fired);
    }

    /** B-P is planned for one pin and wired to another; what its calibration lacks is one thing all the same. */
    @Test
    void nothing_is_found_twice_of_the_faults() throws Exception {
        List<String> told = analyse("faults").findings().stream()
                .map(finding -> finding.rule() + " " + finding.subjects() + " " + finding.message())
                .toList();
        assertEquals(told.stream().distinct().toList(), told);
    }

    @Test
    void every_fault_is_named_in_a_note_on_the_element_it_sits_at() throws Exception {
        Harness harness = HarnessFiles.read(file("faults"));
        for (Rule rule : Rules.ALL) {
            assertTrue(
                    harness.notes().all().stream()
                            .anyMatch(note -> note.about().isPresent()
                                    && note.text().contains(rule.info().id())),
                    rule.info().id());
        }
    }

    /**
     * By hand: shared resistance 56.779 mohm, heater branch 2438.644 mohm, so with the pump's 3 A the heater takes
     * (12.6 - 3 x 0.056779)/(0.056779 + 2.438644) = 4.9810 A, and 4.9810 x 2.4 = 11.9544 V; without the pump
     * 12.6/(0.056655 + 2.438654) = 5.0495 A.
     */
    @Test
    void the_numbers_in_the_notes_of_the_teaching_example_are_those_of_the_analysis() throws Exception {
        Analysis analysis = analyse("teaching");
        LoadVolts heater = load(analysis, "both", "H1");
        assertEquals((12.6 - 3 * 0.056779) / (0.056779 + 2.438644), heater.amps(), FOUR_DECIMALS);
        assertEquals(4.9810, heater.amps(), FOUR_DECIMALS);
        assertEquals(11.9544, heater.volts(), FOUR_DECIMALS);
        assertEquals(0.3321, heater.feedDropVolts(), FOUR_DECIMALS);
        assertEquals(0.1539, heater.returnDropVolts(), FOUR_DECIMALS);
        LoadVolts pump = load(analysis, "both", "P1");
        assertEquals(3, pump.amps(), FOUR_DECIMALS);
        assertEquals(11.9931, pump.volts(), FOUR_DECIMALS);
        assertEquals(0.4473, pump.dropVolts(), FOUR_DECIMALS);
        LoadVolts alone = load(analysis, "heater-only", "H1");
        assertEquals(5.0495, alone.amps(), FOUR_DECIMALS);
        assertEquals(12.1187, alone.volts(), FOUR_DECIMALS);
        String notes = analysis.harness().notes().all().stream().map(Note::text).collect(Collectors.joining());
        for (String printed :
                List.of("4.9810", "11.9544", "0.3321", "0.1539", "11.9931", "0.4473", "5.0495", "12.1187")) {
            assertTrue(notes.contains(printed), printed);
        }
    }

    private static Analysis analyse(String name) throws Exception {
        return AnalysedExamples.of(name);
    }

    private static List<String> messages(Analysis analysis, Severity severity) {
        return analysis.findings().stream()
                .filter(finding -> finding.severity() == severity)
                .map(Finding::message)
                .toList();
    }

    private static LoadVolts load(Analysis analysis, String state, String load) {
        return analysis.solution(new StateId(state)).orElseThrow().loads().get(new ComponentId(load));
    }
}
