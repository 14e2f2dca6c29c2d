package org.ohmloom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Part;
import org.ohmloom.model.Sensor;
import org.ohmloom.store.HarnessFiles;
import org.ohmloom.store.HarnessText;

/** The example harnesses: each opens, says it is invented, and is written back byte for byte. */
class ExamplesTest {

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
    void an_example_lies_on_a_board_with_a_place_for_every_breakout_connector_and_ground_point(String name)
            throws Exception {
        Harness harness = HarnessFiles.read(file(name));
        harness.breakouts()
                .all()
                .forEach(each -> assertPlaced(harness, each.id().value()));
        harness.connectors().all().forEach(each -> {
            assertTrue(each.at().isPresent(), each.id()::value);
            assertPlaced(harness, each.id().value());
        });
        harness.grounds().all().forEach(each -> assertPlaced(harness, each.id().value()));
    }

    private static void assertPlaced(Harness harness, String id) {
        assertTrue(harness.layout().containsKey(id), () -> id + " has no position on the board");
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
}
