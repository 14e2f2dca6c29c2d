package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.BesideOthers;
import org.ohmloom.model.Connector;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Wire;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Row;

@BesideOthers
class BuildOrderTest {

    private static List<Row> steps(String example) {
        return new BuildOrder(Packs.analysis(example))
                .report().blocks().stream()
                        .filter(Block.Table.class::isInstance)
                        .flatMap(block -> ((Block.Table) block).rows().stream())
                        .filter(row -> row.kind() == Row.Kind.ITEM)
                        .toList();
    }

    private static String of(List<Row> steps, String stage) {
        return steps.stream()
                .filter(row -> row.cells().get(1).text().equals(stage))
                .map(row -> row.cells().get(2).text())
                .collect(Collectors.joining("\n"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground", "workboat"})
    void everyWireIsCutOnceAndEveryConnectorWithAWirePopulated(String example) {
        Harness harness = Packs.analysis(example).harness();
        List<Row> steps = steps(example);

        long made =
                harness.wires().all().stream().filter(wire -> !wire.existing()).count();
        double cut = steps.stream()
                .filter(row -> row.cells().get(1).text().equals("Cut and mark"))
                .mapToDouble(row -> row.cells().get(4).number().orElseThrow())
                .sum();
        assertEquals(made, cut);
        String cutting = of(steps, "Cut and mark");
        for (Wire wire : harness.wires().all()) {
            assertEquals(
                    !wire.existing(),
                    cutting.matches("(?s).*\\b" + wire.id() + "\\b.*"),
                    wire.id().value());
        }
        String populating = of(steps, "Populate connectors");
        for (Connector connector : harness.connectors().all()) {
            boolean used = harness.wires().all().stream()
                    .filter(wire -> !wire.existing())
                    .flatMap(wire -> wire.ends().stream())
                    .anyMatch(end -> end.text().startsWith(connector.id() + "."));
            assertEquals(
                    used && !connector.existing(),
                    populating.contains("Populate " + connector.id() + " "),
                    connector.id().value());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "star-ground"})
    void stepsAreNumberedFromOneAndTheLastIsTheTest(String example) {
        List<Row> steps = steps(example);

        for (int i = 0; i < steps.size(); i++) {
            assertEquals(i + 1, steps.get(i).cells().get(0).number().orElseThrow());
        }
        assertTrue(steps.get(steps.size() - 1).cells().get(1).text().startsWith("Test"));
    }
}
