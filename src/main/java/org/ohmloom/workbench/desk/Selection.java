package org.ohmloom.workbench.desk;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.review.Finding;

/**
 * What a person looks at, the same in every view.
 *
 * @param ids     ids of the selected elements, the leading one first
 * @param path    ids of further elements to show with them, such as the members of a loop
 * @param finding the finding it comes from, if any
 * @param centre  whether the layout should bring it into view
 */
public record Selection(List<String> ids, List<String> path, Optional<Finding> finding, boolean centre) {

    /** Nothing. */
    public static final Selection NONE = new Selection(List.of(), List.of(), Optional.empty(), false);

    public Selection {
        ids = List.copyOf(ids);
        path = List.copyOf(path);
    }

    /** Elements by their ids, the layout left where it is. */
    public static Selection of(List<String> ids) {
        return new Selection(ids, List.of(), Optional.empty(), false);
    }

    /** The subjects of a finding, brought into view. */
    public static Selection of(Finding finding) {
        return new Selection(finding.subjects(), finding.highlight(), Optional.of(finding), true);
    }

    /** The same, brought into view on the layout. */
    public Selection centred() {
        return new Selection(ids, path, finding, true);
    }

    /** The leading element. */
    public Optional<String> lead() {
        return ids.stream().findFirst();
    }

    /** The same elements under other identities. */
    Selection renamed(Map<ElementId, ElementId> renamed) {
        Map<String, String> now = new HashMap<>();
        renamed.forEach((old, changed) -> now.put(old.value(), changed.value()));
        return of(ids.stream().map(id -> now.getOrDefault(id, id)).toList());
    }

    /** What is left of it in a changed harness. */
    Selection within(Harness harness) {
        List<String> left =
                ids.stream().filter(id -> harness.element(id).isPresent()).toList();
        return left.equals(ids) ? this : new Selection(left, List.of(), Optional.empty(), false);
    }
}
