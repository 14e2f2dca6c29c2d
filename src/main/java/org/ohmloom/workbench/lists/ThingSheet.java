package org.ohmloom.workbench.lists;

import java.util.Collection;
import java.util.List;
import java.util.function.Function;
import org.ohmloom.model.Element;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.Adding;
import org.ohmloom.workbench.sheet.Column;
import org.ohmloom.workbench.sheet.ElementSheet;

/**
 * A list whose rows are elements as they are entered.
 *
 * @param title   what the list holds, in the plural
 * @param all     the elements
 * @param columns the columns
 * @param adds    what can be added
 * @param <E>     type of the elements
 */
record ThingSheet<E extends Element>(
        String title, Function<Harness, Collection<E>> all, List<Column<E>> columns, List<Adding> adds)
        implements ElementSheet<E> {

    @Override
    public List<E> rows(Readout readout) {
        return List.copyOf(all.apply(readout.harness()));
    }

    @Override
    public ElementId id(E row) {
        return row.id();
    }
}
