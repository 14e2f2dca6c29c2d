package org.ohmloom.graph;

import java.util.HashMap;
import java.util.Map;

/**
 * Joins places without resistance between them into electrical points.
 * <p>Disjoint sets, joined by size, with shortened ways to the root; no recursion. The name that stays is the least by
 * {@link PointName#compareTo}: a component's terminal before a cavity, a splice, a chassis body, a ground point and a
 * wire's own end; among equals the first in natural order.
 */
final class PointMerging {
    private final Map<PointId, PointId> parentOf = new HashMap<>();
    private final Map<PointId, Integer> sizeOf = new HashMap<>();
    private final Map<PointId, PointName> nameOf = new HashMap<>();

    /** Makes the place known. */
    void add(PointName place) {
        if (parentOf.putIfAbsent(place.id(), place.id()) == null) {
            sizeOf.put(place.id(), 1);
            nameOf.put(place.id(), place);
        }
    }

    /** Makes two places one point. */
    void join(PointName one, PointName other) {
        add(one);
        add(other);
        PointId a = rootOf(one.id());
        PointId b = rootOf(other.id());
        if (a.equals(b)) {
            return;
        }
        PointId large = sizeOf.get(a) >= sizeOf.get(b) ? a : b;
        PointId small = large.equals(a) ? b : a;
        parentOf.put(small, large);
        sizeOf.merge(large, sizeOf.get(small), Integer::sum);
        if (nameOf.get(small).compareTo(nameOf.get(large)) < 0) {
            nameOf.put(large, nameOf.get(small));
        }
    }

    /** The point a known place belongs to. */
    PointId pointOf(PointId place) {
        return nameOf.get(rootOf(place)).id();
    }

    /** The point of every known place, by the text of the place. */
    Map<String, PointId> all() {
        Map<String, PointId> points = new HashMap<>();
        parentOf.keySet().forEach(place -> points.put(place.value(), pointOf(place)));
        return points;
    }

    private PointId rootOf(PointId place) {
        PointId root = place;
        while (!parentOf.get(root).equals(root)) {
            root = parentOf.get(root);
        }
        PointId each = place;
        while (!each.equals(root)) {
            PointId next = parentOf.get(each);
            parentOf.put(each, root);
            each = next;
        }
        return root;
    }
}
