package org.ohmloom.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.ohmloom.model.NaturalOrder;

/** How much of a material, and for what. Lengths nobody knows are counted apart, never guessed. */
final class MaterialCount {
    private final TreeSet<String> designators = new TreeSet<>(NaturalOrder.INSTANCE);
    private final List<String> withoutLength = new ArrayList<>();
    private double quantity;

    void add(double more, String designator) {
        quantity += more;
        designators.add(designator);
    }

    /** One piece serves all. */
    void once(String designator) {
        quantity = 1;
        designators.add(designator);
    }

    /** Adds a length in m, or notes that it is unknown. */
    void addLength(OptionalDouble metres, String designator) {
        designators.add(designator);
        if (metres.isPresent()) {
            quantity += metres.getAsDouble();
        } else {
            withoutLength.add(designator);
        }
    }

    double quantity() {
        return quantity;
    }

    List<String> designators() {
        return List.copyOf(designators);
    }

    /** What is used of it but has no length. */
    List<String> withoutLength() {
        return withoutLength;
    }
}
