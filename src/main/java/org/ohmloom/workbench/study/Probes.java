package org.ohmloom.workbench.study;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.ohmloom.draw.flow.FlowPicture;
import org.ohmloom.graph.PointId;
import org.ohmloom.model.StateId;
import org.ohmloom.solve.PointDrop;
import org.ohmloom.units.Formats;
import org.ohmloom.workbench.words.Words;

/**
 * The two points between which the drop is read, and that drop in words.
 *
 * @param from the first; empty while none is picked
 * @param to   the second; empty while none is picked
 */
record Probes(Optional<PointId> from, Optional<PointId> to) {

    /** None picked. */
    static final Probes NONE = new Probes(Optional.empty(), Optional.empty());

    private static final int MOST_NAMED = 4;

    /** What was made of a typed name: a point, or why there is none. */
    record Typed(Optional<PointId> point, String problem) {}

    /** With another point picked: the second after the first; a third makes the second the first. */
    Probes with(PointId picked) {
        Optional<PointId> kept = to.or(() -> from).filter(other -> !other.equals(picked));
        Optional<PointId> before = kept.isPresent() ? kept : from.filter(other -> !other.equals(picked));
        return before.isEmpty()
                ? new Probes(Optional.of(picked), Optional.empty())
                : new Probes(before, Optional.of(picked));
    }

    /** Those that are still points of a picture. */
    Probes within(Optional<FlowPicture> picture) {
        return new Probes(
                from.filter(point ->
                        picture.filter(shown -> shown.isPoint(point.value())).isPresent()),
                to.filter(point ->
                        picture.filter(shown -> shown.isPoint(point.value())).isPresent()));
    }

    boolean isEmpty() {
        return from.isEmpty() && to.isEmpty();
    }

    List<String> ids() {
        return Stream.concat(from.stream(), to.stream()).map(PointId::value).toList();
    }

    /** The drop of which parts are shown: that of the state, otherwise the largest; empty unless both points are picked. */
    Optional<PointDrop> drop(FlowPicture picture, Optional<StateId> state) {
        return from.flatMap(one -> to.flatMap(other -> drop(picture, one, other, state)));
    }

    private static Optional<PointDrop> drop(FlowPicture picture, PointId one, PointId other, Optional<StateId> state) {
        return state.isPresent() ? picture.drop(one, other, state.get()) : picture.largestDrop(one, other);
    }

    /** What is read, in a sentence; empty while no point is picked. */
    String sentence(FlowPicture picture, Optional<StateId> state, Words words) {
        Optional<PointId> one = from.or(() -> to);
        boolean both = from.isPresent() && to.isPresent();
        Optional<PointId> other = both ? to : picture.datum();
        if (one.isEmpty() || other.isEmpty()) {
            return "";
        }
        Optional<PointDrop> drop = drop(picture, one.get(), other.get(), state);
        if (drop.isEmpty()) {
            return words.get("no-volts", one.get(), other.get());
        }
        String read = words.get(
                "drop",
                one.get(),
                other.get(),
                Formats.volts(drop.get().volts()),
                picture.stateName(drop.get().solution().network().state()));
        Optional<PointDrop> worst = picture.largestDrop(one.get(), other.get());
        String compared = drop.get().isOpen()
                ? words.get("drop.open", read)
                : state.isEmpty()
                        ? words.get("drop.worst", read)
                        : worst.map(largest -> words.get(
                                        "drop.more",
                                        read,
                                        Formats.volts(largest.volts()),
                                        picture.stateName(
                                                largest.solution().network().state())))
                                .orElse(read);
        return both ? compared : words.get("next", compared);
    }

    /** The point a person means by a name: as it is written, whatever the case, or the only one that begins so. */
    static Typed typed(FlowPicture picture, String name, Words words) {
        Optional<PointId> exact = picture.pointAt(name);
        if (exact.isPresent() || name.isEmpty()) {
            return new Typed(exact, "");
        }
        String lower = name.toLowerCase(Locale.ROOT);
        List<PointId> alike = picture.points().stream()
                .filter(point -> point.value().toLowerCase(Locale.ROOT).equals(lower))
                .toList();
        List<PointId> begin = alike.isEmpty()
                ? picture.points().stream()
                        .filter(point -> point.value().toLowerCase(Locale.ROOT).startsWith(lower))
                        .toList()
                : alike;
        if (begin.size() == 1) {
            return new Typed(Optional.of(begin.get(0)), "");
        }
        return new Typed(
                Optional.empty(),
                words.get(
                        begin.isEmpty() ? "unknown" : "several",
                        name,
                        named(begin.isEmpty() ? picture.points() : begin)));
    }

    private static String named(List<PointId> points) {
        List<String> first =
                points.stream().limit(MOST_NAMED).map(PointId::value).toList();
        return String.join(", ", first) + (points.size() > MOST_NAMED ? ", …" : "");
    }
}
