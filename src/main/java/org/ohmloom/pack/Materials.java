package org.ohmloom.pack;

import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.ohmloom.model.AssemblyId;
import org.ohmloom.model.ElementId;
import org.ohmloom.model.NaturalOrder;
import org.ohmloom.model.WireColour;

/** Collects materials; equal ones add up. In the order of a bill: assembly, group, part number, description. */
final class Materials {
    static final Comparator<Material> ORDER = Comparator.comparing(
                    (Material material) ->
                            material.assembly().map(AssemblyId::value).orElse(""),
                    NaturalOrder.INSTANCE)
            .thenComparing(Material::kind)
            .thenComparing(material -> material.part().isEmpty())
            .thenComparing(material -> material.part().map(ElementId::value).orElse(""), NaturalOrder.INSTANCE)
            .thenComparing(Material::description, NaturalOrder.INSTANCE)
            .thenComparing(material -> material.colour().map(WireColour::text).orElse(""))
            .thenComparing(Material::unit);

    private final TreeMap<Material, MaterialCount> counts = new TreeMap<>(ORDER);

    /** One more piece. */
    void piece(Material material, String designator) {
        of(material).add(1, designator);
    }

    /** So many more pieces. */
    void pieces(Material material, int more, String designator) {
        of(material).add(more, designator);
    }

    /** One piece, however often it is needed. */
    void once(Material material, String designator) {
        of(material).once(designator);
    }

    /** A length more, m, or one that is unknown. */
    void length(Material material, OptionalDouble metres, String designator) {
        of(material).addLength(metres, designator);
    }

    Map<Material, MaterialCount> all() {
        return new LinkedHashMap<>(counts);
    }

    private MaterialCount of(Material material) {
        return counts.computeIfAbsent(material, key -> new MaterialCount());
    }
}
