package org.ohmloom.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.ohmloom.model.Element;
import org.ohmloom.model.Harness;
import org.ohmloom.model.OperatingState;
import org.ohmloom.model.StateId;
import org.ohmloom.words.Text;

/**
 * Sets sources, loads, switches and outputs in operating states: cells of the matrix of states.
 *
 * @param cells what is set and where
 * @param typed what each of them is set to, as {@link SettingText} and {@link SourceText} read it; empty lets the state say nothing
 */
public record SetInStates(List<Cell> cells, String typed) implements Edit {

    /**
     * A cell of the matrix.
     *
     * @param subject what is set
     * @param state   the state
     */
    public record Cell(StateSubject subject, StateId state) {}

    public SetInStates {
        cells = List.copyOf(cells);
    }

    /**
     * The edit that puts a text into cells.
     *
     * @throws IllegalArgumentException when it does not fit one of them; the message says what would be right
     */
    public static SetInStates of(Harness harness, List<Cell> cells, String typed) {
        cells.forEach(cell -> cell.subject().typed(harness, harness.states().get(cell.state()), typed));
        return new SetInStates(cells, typed);
    }

    @Override
    public Text label() {
        Text where = cells.size() == 1
                ? Labels.text(
                        "in-state", cells.get(0).subject().text(), cells.get(0).state())
                : Labels.text("in-states", cells.size());
        return typed.isBlank() ? Labels.text("clear", where) : Labels.text("set-to", where, typed.strip());
    }

    @Override
    public Harness apply(Harness before) {
        Map<StateId, OperatingState> changed = new LinkedHashMap<>();
        for (Cell cell : cells) {
            OperatingState now =
                    changed.getOrDefault(cell.state(), before.states().get(cell.state()));
            changed.put(cell.state(), cell.subject().typed(before, now, typed));
        }
        return before.withAll(new ArrayList<Element>(changed.values()));
    }
}
