package org.ohmloom.workbench.sheet;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;

/** Puts a block of cells from a spreadsheet into a list: all of it as one step, or nothing of it. */
public final class BlockPaste {

    private BlockPaste() {}

    /**
     * The edit that pastes a block.
     *
     * @param model   the list
     * @param rows    rows of the model from the first cell downwards, in the order shown
     * @param columns columns of the model from the first cell to the right, in the order shown
     * @param block   lines of cells separated by tabs
     * @throws IllegalArgumentException when a cell does not fit; names every such cell
     */
    public static Edit of(SheetModel<?> model, List<Integer> rows, List<Integer> columns, String block) {
        List<Edit> edits = new ArrayList<>();
        List<String> wrong = new ArrayList<>();
        List<String> lines =
                block.replace("\r\n", "\n").replaceFirst("\n$", "").lines().toList();
        for (int k = 0; k < lines.size(); k++) {
            String[] cells = lines.get(k).split("\t", -1);
            for (int m = 0; m < cells.length; m++) {
                if (k >= rows.size() || m >= columns.size()) {
                    wrong.add("'" + cells[m] + "' has no cell here");
                    continue;
                }
                try {
                    edits.add(model.parse(List.of(rows.get(k)), columns.get(m), cells[m]));
                } catch (IllegalArgumentException unfit) {
                    wrong.add(model.id(rows.get(k)) + " "
                            + model.column(columns.get(m)).title() + ": " + unfit.getMessage());
                }
            }
        }
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException("Nothing was pasted. " + String.join("; ", wrong));
        }
        return edits.size() == 1 ? edits.get(0) : new Compound("Paste " + edits.size() + " cells", edits);
    }
}
