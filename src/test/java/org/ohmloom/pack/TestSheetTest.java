package org.ohmloom.pack;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.TreeSet;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.pack.page.Block;
import org.ohmloom.pack.page.Row;

/** The test sheet as it is printed: what is done alike is said once, and every net can still be ticked. */
class TestSheetTest {

    @ParameterizedTest
    @ValueSource(strings = {"teaching", "rescue-pickup"})
    void netsThatAreTestedAlikeStandBelowOneInstructionAndEachOfThemOnce(String example) {
        Analysis analysis = Packs.analysis(example);
        Block.Table table = new TestSheet(analysis)
                .report().blocks().stream()
                        .filter(Block.Table.class::isInstance)
                        .map(Block.Table.class::cast)
                        .filter(each -> each.file().equals("isolation"))
                        .findFirst()
                        .orElseThrow();
        TreeSet<String> instructions = new TreeSet<>();
        TreeSet<String> nets = new TreeSet<>();
        for (Row row : table.rows()) {
            String first = row.cells().get(0).text();
            assertTrue(row.kind() == Row.Kind.GROUP ? instructions.add(first) : nets.add(first), first);
        }
        List<String> planned = analysis.evidence().tests().plan().isolation().stream()
                .map(test -> test.net().id())
                .sorted()
                .toList();
        assertEquals(planned, List.copyOf(nets));
        assertTrue(instructions.size() <= 3, instructions.toString());
        assertTrue(table.columns().stream().anyMatch(column -> column.head().equals("Good")));
    }
}
