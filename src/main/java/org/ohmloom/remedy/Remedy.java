package org.ohmloom.remedy;

import java.util.List;
import java.util.Optional;
import org.ohmloom.edit.Edit;
import org.ohmloom.review.Finding;
import org.ohmloom.review.Severity;

/**
 * A change that was tried on a copy, and what came of it.
 *
 * @param kind          which of the usual remedies it is
 * @param edit          the change, to be applied and undone like any other
 * @param effect        what becomes of the number the finding is about, where it has one
 * @param addedCopperKg copper of the wires afterwards less now, kg; straps are not counted
 * @param addedMetres   length of the wires afterwards less now, m
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
        boolean clears,
        List<Finding> removed,
        List<Finding> added) {

    public Remedy {
        removed = List.copyOf(removed);
        added = List.copyOf(added);
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
