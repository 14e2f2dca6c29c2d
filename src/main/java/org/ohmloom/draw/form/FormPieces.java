package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.ohmloom.bundle.section.BundleStudy;
import org.ohmloom.bundle.section.SegmentSection;
import org.ohmloom.draw.Point;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.BundleSegment;
import org.ohmloom.model.Harness;
import org.ohmloom.model.Position;
import org.ohmloom.model.SegmentId;

/**
 * Takes a harness apart into its connected pieces, each a tree: a ring is opened at its thinnest segment, which keeps its length and
 * ends free. What is fitted where runs pass gets a leader of its own.
 */
final class FormPieces {

    private static final double LEAST_WIDTH_MM = 2;
    private static final double LEAST_LEADER_MM = 35;

    private final Harness harness;
    private final BundleStudy study;
    private final FormCards cards;
    private final Map<BreakoutId, BreakoutId> above = new TreeMap<>();
    private final Map<SegmentId, Boolean> opened = new TreeMap<>();

    private FormPieces(Harness harness, BundleStudy study, FormCards cards) {
        this.harness = harness;
        this.study = study;
        this.cards = cards;
        List<BundleSegment> thickFirst = new ArrayList<>(harness.segments().all());
        thickFirst.sort(Comparator.comparingDouble((BundleSegment each) -> -widthMm(each)));
        for (BundleSegment segment : thickFirst) {
            BreakoutId one = root(segment.from());
            BreakoutId other = root(segment.to());
            opened.put(segment.id(), one.equals(other));
            above.put(one, other);
        }
    }

    /** The pieces, in the order of their first breakout. */
    static List<FormPiece> of(Harness harness, BundleStudy study, FormCards cards) {
        return new FormPieces(harness, study, cards).all();
    }

    private BreakoutId root(BreakoutId id) {
        BreakoutId at = id;
        while (!above.getOrDefault(at, at).equals(at)) {
            at = above.get(at);
        }
        return at;
    }

    private List<FormPiece> all() {
        Map<BreakoutId, List<BreakoutId>> groups = new LinkedHashMap<>();
        for (BreakoutId id : harness.breakouts().ids()) {
            groups.computeIfAbsent(root(id), each -> new ArrayList<>()).add(id);
        }
        List<FormPiece> pieces = new ArrayList<>();
        for (List<BreakoutId> group : groups.values()) {
            if (group.size() > 1 || cards.places().contains(group.get(0))) {
                pieces.add(piece(group));
            }
        }
        return pieces;
    }

    private FormPiece piece(List<BreakoutId> group) {
        List<FormNode> nodes = new ArrayList<>();
        List<Optional<FormCard>> cardOf = new ArrayList<>();
        List<FormRun> runs = new ArrayList<>();
        List<String> said = new ArrayList<>();
        SortedSet<AssemblyId> assemblies = new TreeSet<>();
        Map<BreakoutId, Integer> number = new TreeMap<>();
        List<BundleSegment> segments = harness.segments().all().stream()
                .filter(segment -> group.contains(segment.from()))
                .toList();
        for (BreakoutId id : group) {
            long meeting = segments.stream()
                    .filter(each ->
                            each.from().equals(id) || (each.to().equals(id) && !opened.getOrDefault(each.id(), false)))
                    .count();
            Optional<FormCard> card = cards.at(id);
            number.put(id, nodes.size());
            boolean atEnd = meeting <= 1;
            nodes.add(node(id.value(), atEnd ? card : Optional.empty()));
            cardOf.add(atEnd ? card : Optional.empty());
            if (!atEnd && card.isPresent()) {
                runs.add(new FormRun(
                        id.value(),
                        number.get(id),
                        nodes.size(),
                        LEAST_LEADER_MM,
                        0.5,
                        0,
                        OptionalDouble.empty(),
                        true));
                nodes.add(node(id.value(), card));
                cardOf.add(card);
            }
        }
        for (BundleSegment segment : segments) {
            segment.assembly().ifPresent(assemblies::add);
            int to = number.get(segment.to());
            if (opened.getOrDefault(segment.id(), false)) {
                FormCard card = cards.opened(segment, segment.to());
                to = nodes.size();
                nodes.add(node(segment.id().value(), Optional.of(card)));
                cardOf.add(Optional.of(card));
                said.add("Segment " + segment.id() + " closes a ring: it is laid open from breakout " + segment.from()
                        + " at its full length; its free end joins breakout " + segment.to() + ".");
            }
            runs.add(run(segment, number.get(segment.from()), to));
        }
        return new FormPiece(new FormTree(nodes, runs), cardOf, assemblies, said);
    }

    private static FormNode node(String id, Optional<FormCard> card) {
        return new FormNode(
                id,
                card.map(FormCard::widthMm).orElse(0.0),
                card.map(FormCard::heightMm).orElse(0.0));
    }

    private FormRun run(BundleSegment segment, int from, int to) {
        double width = widthMm(segment);
        double bend = study.of(segment.id()).map(SegmentSection::bendLeastMm).orElse(0.0) + width / 2;
        Position one = harness.layout().get(segment.from().value());
        Position other = harness.layout().get(segment.to().value());
        OptionalDouble wish = one == null || other == null || one.equals(other)
                ? OptionalDouble.empty()
                : OptionalDouble.of(Headings.to(new Point(one.xMm(), one.yMm()), new Point(other.xMm(), other.yMm())));
        return new FormRun(segment.id().value(), from, to, segment.lengthMetres() * 1000, width, bend, wish, false);
    }

    private double widthMm(BundleSegment segment) {
        double finished = study.of(segment.id()).map(SegmentSection::finishedMm).orElse(0.0);
        return Math.max(LEAST_WIDTH_MM, finished);
    }
}
