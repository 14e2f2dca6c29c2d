package org.ohmloom.model;

import static org.ohmloom.units.Require.notBlank;
import static org.ohmloom.units.Require.that;

import java.util.List;
import java.util.Optional;

/**
 * Which loads a builder lets run together.
 *
 * @param id      identity
 * @param name    what people call the rule
 * @param kind    what the rule is
 * @param members loads it holds for, at least two, each once
 * @param atMost  how many of them may be on at once, 1 or more; given exactly for {@link Kind#AT_MOST}
 */
public record LoadGroup(LoadGroupId id, String name, Kind kind, List<ComponentId> members, Optional<Integer> atMost)
        implements Element {

    /** What the rule asks. */
    public enum Kind {
        /** At most one of them is on. */
        EXCLUSIVE,
        /** All are on or all are off. */
        TOGETHER,
        /** At most so many of them are on. */
        AT_MOST
    }

    public LoadGroup {
        notBlank(name, "name of load group %s", id);
        members = List.copyOf(members);
        that(members.size() >= 2, "load group %s needs at least two loads", id);
        that(members.stream().distinct().count() == members.size(), "load group %s names a load twice", id);
        that(
                atMost.isPresent() == (kind == Kind.AT_MOST),
                "load group %s: a number that may be on is given exactly for an at-most group",
                id);
        atMost.ifPresent(value -> that(value >= 1, "load group %s: at least one load may be on, was %s", id, value));
    }

    /** Most members that may be on at once. */
    public int mostOn() {
        return switch (kind) {
            case EXCLUSIVE -> 1;
            case TOGETHER -> members.size();
            case AT_MOST -> Math.min(atMost.orElseThrow(), members.size());
        };
    }
}
