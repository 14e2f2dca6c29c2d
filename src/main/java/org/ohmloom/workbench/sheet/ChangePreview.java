package org.ohmloom.workbench.sheet;

import java.awt.Component;
import java.util.Optional;
import org.ohmloom.edit.Edit;

/** Shows a person what would change in the cells of a list before it does. */
@FunctionalInterface
public interface ChangePreview {

    /**
     * Asks.
     *
     * @param owner   what the question belongs to
     * @param changes what would change
     * @return the edit a person agrees to; empty when nothing is to change
     */
    Optional<Edit> ask(Component owner, CellChanges changes);
}
