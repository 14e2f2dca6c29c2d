package org.ohmloom.remedy;

import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Compound;
import org.ohmloom.edit.Edit;
import org.ohmloom.edit.SetWireGauge;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;
import org.ohmloom.words.Text;

/**
 * A change that was tried on a copy, and what came of it.
 *
 * @param kind          which of the usual remedies it is
 * @param edit          the change, to be applied and undone like any other
 * @param effect        what becomes of the number the finding is about, where it has one
 * @param addedCopperKg copper of wires and straps afterwards less now, kg
 * @param addedMetres   length of wires and straps afterwards less now, m
 * @param unmeasured    straps it adds whose length nothing tells, which are in neither
 * @param clears        whether the finding is gone and nothing new is as grave
 * @param removed       findings that are gone
 * @param added         findings that are new
 */
public record Remedy(
        RemedyKind kind,
        Edit edit,
        Optional<Effect> effect,
        double addedCopperKg,
        double addedMetres,
        List<String> unmeasured,
        boolean clears,
        List<Finding> removed,
        List<Finding> added) {

    public Remedy {
        unmeasured = List.copyOf(unmeasured);
        removed = List.copyOf(removed);
        added = List.copyOf(added);
    }

    /** What it changes, one line for each of the changes that make it up. */
    public List<Text> steps() {
        return kind == RemedyKind.COMBINED && edit instanceof Compound together
                ? together.edits().stream().map(Remedy::words).toList()
                : List.of(edit.label());
    }

    /** What an edit does; of several sizes set together each of them. */
    private static Text words(Edit step) {
        boolean setsSizes =
                step instanceof Compound sizes && sizes.edits().stream().allMatch(SetWireGauge.class::isInstance);
        return setsSizes
                ? Text.joined(
                        ", ",
                        ((Compound) step).edits().stream().map(Edit::label).toList())
                : step.label();
    }

    /** New findings that are worse than a note. */
    public long worsening() {
        return added.stream().filter(each -> each.severity() != Severity.NOTE).count();
    }

    /** Findings gone that are worse than a note. */
    public long bettering() {
        return removed.stream().filter(each -> each.severity() != Severity.NOTE).count();
    }
}
