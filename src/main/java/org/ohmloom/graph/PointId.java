package org.ohmloom.graph;

import static org.ohmloom.units.Require.notBlank;

import org.ohmloom.model.NaturalOrder;

/**
 * Identity of an electrical point, made from the elements that meet there: {@code BAT1.+}, {@code X1.3}, {@code S1}.
 *
 * @param value the text
 */
public record PointId(String value) implements Comparable<PointId> {

    public PointId {
        notBlank(value, "point");
    }

    @Override
    public int compareTo(PointId other) {
        return NaturalOrder.INSTANCE.compare(value, other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
