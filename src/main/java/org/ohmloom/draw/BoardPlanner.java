package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Position;

/**
 * Lays the physical harness out: the longest way through it as a level trunk, what hangs at each breakout above and below
 * it in rows that never meet. Not to scale. Several trunks and spacings are tried; the one that fills a sheet of the
 * wanted proportion best is taken. Positions given by the harness move a breakout with all beyond it.
 */
final class BoardPlanner {

    private static final Point ORIGIN = new Point(0, 0);
    private static final Extent NOTHING = new Extent(0, 0, 0, 0);
    private static final double BETWEEN_TREES_MM = 12;
    private static final double CLEARANCE_MM = 7;
    private static final List<Double> SPREADS = List.of(0.0, 0.15, 0.3, 0.45, 0.6, 0.8, 1.0);

    private final Sprouts sprouts;
    private final RunTexts texts;
    private final RunLabels labels;
    private final Thickness thickness;
    private final Map<String, Position> positions;
    private final SortedSet<BreakoutId> sources;

    BoardPlanner(
            Sprouts sprouts,
            RunTexts texts,
            RunLabels labels,
            Thickness thickness,
            Map<String, Position> positions,
            SortedSet<BreakoutId> sources) {
        this.sprouts = sprouts;
        this.texts = texts;
        this.labels = labels;
        this.thickness = thickness;
        this.positions = positions;
        this.sources = sources;
    }

    /**
     * The board of all trees, side by side in rows.
     *
     * @param aspectRatio wanted width over height, more than 0
     */
    Board plan(List<Tree> trees, double aspectRatio) {
        List<Plan> plans = trees.stream().map(tree -> best(tree, aspectRatio)).toList();
        List<Extent> extents = new ArrayList<>();
        for (int k = 0; k < plans.size(); k++) {
            extents.add(arranged(plans.get(k), Map.of(), ORIGIN).bounds().orElse(NOTHING));
        }
        double widest = extents.stream().mapToDouble(Extent::widthMm).max().orElse(0);
        double area = extents.stream()
                .mapToDouble(each -> (each.widthMm() + BETWEEN_TREES_MM) * (each.heightMm() + BETWEEN_TREES_MM))
                .sum();
        double room = Math.max(widest, 1.1 * Math.sqrt(area * aspectRatio));
        Board all = new Board(List.of(), List.of(), List.of());
        double x = 0;
        double y = 0;
        double high = 0;
        for (int k = 0; k < plans.size(); k++) {
            Extent extent = extents.get(k);
            if (x > 0 && x + extent.widthMm() > room) {
                x = 0;
                y += high + BETWEEN_TREES_MM;
                high = 0;
            }
            Point origin = new Point(x - extent.leftMm(), y - extent.topMm());
            all = all.with(arranged(plans.get(k), positions, origin));
            x += extent.widthMm() + BETWEEN_TREES_MM;
            high = Math.max(high, extent.heightMm());
        }
        return all;
    }

    /** A way to lay a tree out: its trunk with what hangs there, and how far apart its breakouts stand, from 0 to 1. */
    private record Plan(List<BreakoutId> trunk, List<Tie> ties, List<Fan> fans, double spread) {}

    private Plan best(Tree tree, double aspectRatio) {
        List<ToDoubleFunction<Tie>> measures =
                List.of(Tie::lengthMetres, tie -> 1, tie -> thickness.count(tie.id()), tie -> 1 + tie.lengthMetres());
        List<List<BreakoutId>> trunks = new ArrayList<>(measures.stream()
                .map(measure -> tree.trunk(measure, sources))
                .distinct()
                .toList());
        List<Plan> hubs = texts.onSheet() ? hubs(tree, trunks.get(0)) : List.of();
        return Stream.concat(hubs.stream(), trunks.stream().flatMap(trunk -> plans(tree, trunk).stream()))
                .map(plan -> new Sized(plan, sizeMm(plan, aspectRatio)))
                .min(Comparator.comparingDouble(Sized::sizeMm))
                .orElseThrow()
                .plan();
    }

    /** A plan and the height of the smallest sheet of the wanted proportion that it fits on, mm. */
    private record Sized(Plan plan, double sizeMm) {}

    private double sizeMm(Plan plan, double aspectRatio) {
        return arranged(plan, Map.of(), ORIGIN)
                .bounds()
                .map(extent -> Math.max(extent.widthMm() / aspectRatio, extent.heightMm()))
                .orElse(0.0);
    }

    /**
     * Plans around one breakout instead of along a trunk, for narrow sheets: around the one where most ties meet and around
     * the ends of the trunk, with what hangs there on both sides or on the right only.
     */
    private List<Plan> hubs(Tree tree, List<BreakoutId> trunk) {
        BreakoutId hub = tree.breakouts().stream()
                .max(Comparator.comparingInt((BreakoutId id) -> tree.at(id).size())
                        .thenComparing(Comparator.reverseOrder()))
                .orElseThrow();
        List<Plan> plans = new ArrayList<>();
        for (BreakoutId at : new TreeSet<>(List.of(hub, trunk.get(0), trunk.get(trunk.size() - 1)))) {
            List<Twig> twigs = sprouts.twigs(tree, at, List.of());
            for (Fan fan : List.of(Fan.of(at, twigs, true, true), Fan.toTheRight(at, twigs))) {
                plans.add(new Plan(List.of(at), List.of(), List.of(fan), 0));
            }
        }
        return plans;
    }

    private List<Plan> plans(Tree tree, List<BreakoutId> trunk) {
        int last = trunk.size() - 1;
        List<Tie> ties = new ArrayList<>();
        for (int k = 0; k < last; k++) {
            BreakoutId next = trunk.get(k + 1);
            ties.add(tree.at(trunk.get(k)).stream()
                    .filter(tie -> tie.touches(next))
                    .findFirst()
                    .orElseThrow());
        }
        List<Fan> fans = new ArrayList<>();
        for (int k = 0; k <= last; k++) {
            List<Twig> twigs = sprouts.twigs(tree, trunk.get(k), ties);
            fans.add(Fan.of(trunk.get(k), twigs, last == 0, k == 0 || k == last));
        }
        return SPREADS.stream()
                .map(spread -> new Plan(trunk, ties, fans, spread))
                .toList();
    }

    private Board arranged(Plan plan, Map<String, Position> moved, Point origin) {
        List<BreakoutId> trunk = plan.trunk();
        List<Tie> ties = plan.ties();
        double[] x = new double[trunk.size()];
        for (int k = 1; k < x.length; k++) {
            double least = sprouts.runMm(ties.get(k - 1), trunk.get(k - 1), true, k == 1);
            double roomy = k == 1 ? 0 : plan.fans().get(k - 1).widthMm() + Bush.GAP_MM;
            x[k] = x[k - 1] + least + plan.spread() * Math.max(0, roomy - least);
        }
        double beside = 0;
        for (int k = 0; k < ties.size(); k++) {
            RunText text = texts.of(ties.get(k), trunk.get(k + 1), true, k == 0);
            beside = Math.max(beside, Math.max(text.aboveMm(), text.belowMm()));
        }
        double clearance = CLEARANCE_MM
                + beside
                + ties.stream()
                                .mapToDouble(tie -> thickness.bodyMm(tie.id()))
                                .max()
                                .orElse(0)
                        / 2;
        return new Spread(texts, labels, moved, origin).trunk(trunk, ties, plan.fans(), x, clearance);
    }
}
