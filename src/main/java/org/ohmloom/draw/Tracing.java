package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Place;

/** Follows the way of each wire over the board; a segment that closes a loop interrupts the line at both its ends. */
final class Tracing {

    private final Doors doors;
    private final Map<String, Board.Run> runs = new HashMap<>();
    private final Map<String, List<Board.Placed>> cards = new HashMap<>();

    Tracing(Board board, Doors doors) {
        this.doors = doors;
        board.runs().forEach(run -> runs.putIfAbsent(run.tie().id(), run));
        board.cards().forEach(placed -> cards.computeIfAbsent(placed.card().element(), any -> new ArrayList<>())
                .add(placed));
    }

    List<Trace> of(WirePath path) {
        List<Trace> traces = new ArrayList<>();
        List<Trace.Level> levels = new ArrayList<>();
        List<BreakoutId> passed = new ArrayList<>();
        spur(path.from()).ifPresent(levels::add);
        int joint = 0;
        List<Tie> ties = path.ties();
        for (int k = 0; k < ties.size(); k++) {
            Tie tie = ties.get(k);
            boolean first = k == 0 && path.from().place() instanceof Place.OnSegment;
            boolean last = k == ties.size() - 1 && path.to().place() instanceof Place.OnSegment;
            if (!first) {
                passed.add(path.joints().get(joint++));
            }
            Optional<Board.Run> run = run(tie);
            if (run.isPresent()) {
                Optional<Double> x = first || last ? door(first ? path.from() : path.to()) : Optional.empty();
                levels.add(new Trace.Level(tie.id(), run.get().from().yMm(), x));
                if (first && last) {
                    levels.add(new Trace.Level(tie.id(), run.get().from().yMm(), door(path.to())));
                }
            } else if (!first && !last) {
                loopEnd(tie, passed.get(passed.size() - 1)).ifPresent(levels::add);
                keep(path, levels, passed, traces);
                loopEnd(tie, path.joints().get(joint)).ifPresent(levels::add);
            }
        }
        if (joint < path.joints().size()) {
            passed.add(path.joints().get(joint));
        }
        spur(path.to()).ifPresent(levels::add);
        keep(path, levels, passed, traces);
        return traces;
    }

    private static void keep(WirePath path, List<Trace.Level> levels, List<BreakoutId> passed, List<Trace> traces) {
        boolean within = passed.isEmpty() && levels.size() == 2;
        if (levels.size() == passed.size() + 1 || within) {
            traces.add(new Trace(path.wire(), levels, passed));
        }
        levels.clear();
        passed.clear();
    }

    private Optional<Double> door(Spot spot) {
        return doors.of(spot.element()).map(Point::xMm);
    }

    private Optional<Trace.Level> spur(Spot spot) {
        return spot.place() instanceof Place.OnSegment
                ? Optional.empty()
                : doors.of(spot.element())
                        .map(door -> new Trace.Level(spot.element(), door.yMm(), Optional.of(door.xMm())));
    }

    private Optional<Trace.Level> loopEnd(Tie tie, BreakoutId at) {
        return cards.getOrDefault(tie.id(), List.of()).stream()
                .filter(placed -> placed.joint().filter(at::equals).isPresent())
                .findFirst()
                .map(placed -> placed.door(tie.id()))
                .map(door -> new Trace.Level(tie.id(), door.yMm(), Optional.of(door.xMm())));
    }

    private Optional<Board.Run> run(Tie tie) {
        return Optional.ofNullable(runs.get(tie.id()));
    }
}
