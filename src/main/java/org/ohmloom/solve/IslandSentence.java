package org.ohmloom.solve;

import java.util.Optional;
import org.ohmloom.graph.PointId;
import org.ohmloom.words.Text;

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
        Text points = part.points().size() == 1
                ? SolveTexts.text("island.one-point")
                : SolveTexts.text("island.points", part.points().size());
        if (part.source().isEmpty()) {
            return new Island(
                    part.id(),
                    IslandStatus.NO_SOURCE,
                    SolveTexts.text("island.no-source", part.id(), points),
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
                    SolveTexts.text("island.solved", points, datum),
                    Optional.empty(),
                    true);
        }
        return new Island(
                part.id(),
                IslandStatus.FLOATING,
                SolveTexts.text(
                        "island.floating",
                        points,
                        main.map(Text::of).orElseGet(() -> SolveTexts.text("island.first-source")),
                        datum,
                        part.source().orElseThrow().id()),
                Optional.empty(),
                true);
    }
}
