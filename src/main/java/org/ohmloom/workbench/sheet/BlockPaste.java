package org.ohmloom.workbench.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.workbench.words.Words;

/** Puts a block of cells from a spreadsheet into a list: all of it as one step, or what fits of it when a person says so. */
public final class BlockPaste {
    private static final Words WORDS = Words.of("sheets");

    private BlockPaste() {}

    /** Rows of cells as spreadsheets hand them over: separated by tabs, lines ended in any way. */
    static List<List<String>> cells(String block) {
        return block.replace("\r\n", "\n")
                .replaceFirst("\n$", "")
                .lines()
                .map(line -> List.of(line.split("\t", -1)))
                .toList();
    }

    /**
     * What a block would change.
     *
     * @param model   the list
     * @param rows    rows of the model from the first cell downwards, in the order shown
     * @param columns columns of the model from the first cell to the right, in the order shown
     * @param block   lines of cells separated by tabs
     */
    public static CellChanges plan(SheetModel<?> model, List<Integer> rows, List<Integer> columns, String block) {
        List<CellChanges.Cell> cells = new ArrayList<>();
        List<List<String>> lines = cells(block);
        for (int k = 0; k < lines.size(); k++) {
            for (int m = 0; m < lines.get(k).size(); m++) {
                String text = lines.get(k).get(m);
                if (k >= rows.size() || m >= columns.size()) {
                    String row = k < rows.size() ? model.id(rows.get(k)) : "";
                    String column =
                            m < columns.size() ? model.column(columns.get(m)).title() : "";
                    cells.add(CellChanges.Cell.refused(row, column, "", text, noCell()));
                } else {
                    CellChanges.cell(model, rows.get(k), columns.get(m), text).ifPresent(cells::add);
                }
            }
        }
        return new CellChanges(WORDS.get("block-paste.paste"), cells);
    }

    /**
     * The edit that pastes a block.
     *
     * @throws IllegalArgumentException when a cell does not fit; names every such cell
     */
    public static Edit of(SheetModel<?> model, List<Integer> rows, List<Integer> columns, String block) {
        CellChanges plan = plan(model, rows, columns, block);
        if (!plan.refused().isEmpty()) {
            throw new IllegalArgumentException(WORDS.get(
                    "block-paste.nothing-was-pasted",
                    plan.refused().stream()
                            .map(cell -> cell.problem().equals(noCell())
                                    ? WORDS.get("block-paste.has-no-cell-here", cell.after())
                                    : cell.row() + " " + cell.column() + ": " + cell.problem())
                            .collect(Collectors.joining("; "))));
        }
        Optional<Edit> edit = plan.edit();
        return edit.orElseGet(() -> new Compound(WORDS.text("block-paste.paste"), List.of()));
    }

    private static String noCell() {
        return WORDS.get("block-paste.there-is-no-cell");
    }
}
