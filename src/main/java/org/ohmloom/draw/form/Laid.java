package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Point;

/**
 * One piece laid out.
 *
 * @param tree  the piece
 * @param ways  how each of its runs lies, from the run's from node to its to node
 * @param nodes where each node lies
 * @param cards where the card of each node lies
 */
record Laid(FormTree tree, List<Way> ways, List<Point> nodes, List<Optional<Extent>> cards) {

    private static final double AT_HAND_MM = WaySearch.CARD_GAP_MM + 2;

    Laid {
        ways = List.copyOf(ways);
        nodes = List.copyOf(nodes);
        cards = List.copyOf(cards);
    }

    /** The line from a node to its card where that lies away from it; empty where it is at hand, or there is none. */
    Optional<List<Point>> pointer(int node) {
        return cards.get(node).flatMap(card -> {
            Point from = nodes.get(node);
            Point to = new Point(
                    Math.max(card.leftMm(), Math.min(card.rightMm(), from.xMm())),
                    Math.max(card.topMm(), Math.min(card.bottomMm(), from.yMm())));
            return from.distanceMm(to) > AT_HAND_MM ? Optional.of(List.of(from, to)) : Optional.empty();
        });
    }

    /** The smallest rectangle around it. */
    Extent bounds() {
        List<Extent> all = new ArrayList<>();
        for (int k = 0; k < ways.size(); k++) {
            all.add(Extent.around(ways.get(k).points()).grown(tree.runs().get(k).widthMm() / 2));
        }
        nodes.forEach(node -> all.add(new Extent(node.xMm(), node.yMm(), node.xMm(), node.yMm())));
        cards.forEach(card -> card.ifPresent(all::add));
        return Extent.union(all).orElse(new Extent(0, 0, 0, 0));
    }

    /** The same with its cards elsewhere. */
    Laid withCards(List<Optional<Extent>> elsewhere) {
        return new Laid(tree, ways, nodes, elsewhere);
    }

    Laid moved(double dxMm, double dyMm) {
        return new Laid(
                tree,
                ways.stream().map(way -> way.moved(dxMm, dyMm)).toList(),
                nodes.stream().map(node -> node.plus(dxMm, dyMm)).toList(),
                cards.stream()
                        .map(card -> card.map(extent -> extent.moved(dxMm, dyMm)))
                        .toList());
    }
}
