package org.ohmloom.edit;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.Harness;
import org.ohmloom.words.Text;
import org.ohmloom.words.UnfitException;

/**
 * Gives elements other identities; whatever refers to them follows.
 *
 * @param renamed new identities by old ones, each of the same kind; two may change places
 */
public record RenameElements(Map<ElementId, ElementId> renamed) implements Edit {

    public RenameElements {
        Map<ElementId, ElementId> changed = new LinkedHashMap<>(renamed);
        changed.entrySet().removeIf(entry -> entry.getKey().equals(entry.getValue()));
        renamed = Collections.unmodifiableMap(changed);
        renamed.forEach((old, now) -> {
            if (old.getClass() != now.getClass()) {
                throw new UnfitException("'%s' is not the kind of identity '%s' has", now, old);
            }
        });
    }

    @Override
    public Text label() {
        if (renamed.size() == 1) {
            Map.Entry<ElementId, ElementId> only = renamed.entrySet().iterator().next();
            return Labels.text("rename-to", only.getKey(), only.getValue());
        }
        return Labels.text("rename", Labels.subjects(renamed.keySet(), "things"));
    }

    /**
     * The harness with the new identities.
     *
     * @throws IllegalArgumentException when two elements would have one identity
     */
    @Override
    public Harness apply(Harness before) {
        return renamed.isEmpty() ? before : IdentityChange.of(before, renamed);
    }
}
