package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.PointId;

/** Says in words how far the solution of an island got. */
final class IslandSentence {

    private IslandSentence() {}

    /**
     * The island as it is published.
     *
     * @param part    its points and branches
     * @param failure why it has no solution, if it has none
     * @param main    the point the voltages of the network are relative to
     */
    static Island of(IslandPart part, Optional<Failure> failure, Optional<PointId> main) {
        String points = part.points().size() == 1 ? "1 point" : part.points().size() + " points";
        if (part.source().isEmpty()) {
            return new Island(
                    part.id(),
                    IslandStatus.NO_SOURCE,
                    "No source feeds " + part.id() + " (" + points + "): no current flows.",
                    Optional.empty(),
                    false);
        }
        if (failure.isPresent()) {
            return new Island(
                    part.id(),
                    failure.get().status(),
                    failure.get().sentence(),
                    failure.get().cause(),
                    true);
        }
        PointId datum = part.datum().orElseThrow();
        if (part.isMain()) {
            return new Island(
                    part.id(),
                    IslandStatus.SOLVED,
                    "Solved: " + points + ", voltages against " + datum + ".",
                    Optional.empty(),
                    true);
        }
        return new Island(
                part.id(),
                IslandStatus.FLOATING,
                "Nothing joins these " + points + " to "
                        + main.map(PointId::value).orElse("the first source")
                        + ": currents are known, voltages are measured from " + datum + ", the negative terminal of "
                        + part.source().orElseThrow().id() + ".",
                Optional.empty(),
                true);
    }
}
