package org.ohmloom.workbench.print;

import java.awt.Component;
import java.awt.Container;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.swing.JTable;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.draw.Paper;
import org.ohmloom.model.TitleBlock;
import org.ohmloom.pack.PackDocument;
import org.ohmloom.pack.PrintedDocument;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** What of a harness can be printed: each document of the build pack, and each list that is seen in the window. */
final class Printables {

    private Printables() {}

    /**
     * All of it, the drawing first.
     *
     * @param within what the lists are looked for in
     */
    static List<Printed> of(Analysis analysis, Container within) {
        List<Printed> all = new ArrayList<>();
        all.add(new Document(analysis, PackDocument.DRAWING));
        for (PackDocument document : PackDocument.values()) {
            if (document != PackDocument.DRAWING) {
                all.add(new Document(analysis, document));
            }
        }
        addLists(analysis.harness().titleBlock(), within, all);
        return all;
    }

    private static void addLists(TitleBlock titleBlock, Container within, List<Printed> all) {
        for (Component each : within.getComponents()) {
            if (each instanceof JTable table) {
                if (table.isShowing() && table.getRowCount() > 0) {
                    all.add(Listed.of(titleBlock, table));
                }
            } else if (each instanceof Container container) {
                addLists(titleBlock, container, all);
            }
        }
    }

    /** A document of the build pack. */
    private record Document(Analysis analysis, PackDocument document) implements Printed {
        @Override
        public String name() {
            return TradeWords.named(document);
        }

        @Override
        public PrintedDocument set(Paper paper, boolean monochrome) {
            return PrintedDocument.of(analysis, document, paper, monochrome);
        }
    }

    /** A list as it is seen: its columns and rows in their order, as texts. */
    record Listed(
            TitleBlock titleBlock, String title, List<String> heads, List<Boolean> numeric, List<List<String>> rows)
            implements Printed {

        /** The list in a table, as it is now. */
        static Listed of(TitleBlock titleBlock, JTable table) {
            List<String> heads = IntStream.range(0, table.getColumnCount())
                    .mapToObj(table::getColumnName)
                    .map(head -> head.isBlank() ? "·" : head)
                    .toList();
            List<List<String>> rows = IntStream.range(0, table.getRowCount())
                    .mapToObj(row -> IntStream.range(0, table.getColumnCount())
                            .mapToObj(column -> String.valueOf(table.getValueAt(row, column)))
                            .toList())
                    .toList();
            List<Boolean> numeric = IntStream.range(0, heads.size())
                    .mapToObj(column -> rows.stream()
                            .map(row -> row.get(column))
                            .allMatch(cell -> cell.isBlank() || cell.matches("-?[0-9]+(\\.[0-9]+)?")))
                    .toList();
            String title = table.getAccessibleContext().getAccessibleName();
            return new Listed(titleBlock, title == null ? table.getName() : title, heads, numeric, rows);
        }

        @Override
        public String name() {
            return Words.of("print").get("list", title);
        }

        @Override
        public PrintedDocument set(Paper paper, boolean monochrome) {
            return PrintedDocument.ofTable(titleBlock, title, heads, numeric, rows, paper, monochrome);
        }
    }
}
