package org.ohmloom.heat.balance;

import java.util.ArrayList;
import java.util.List;

/**
 * A bundle in which one wire after the other is tried at another size or current while the rest stay. Each trial begins at the
 * temperatures where the bundle settles as it is, which are near. Safe for any number of threads.
 */
public final class OneTried {
    private final List<Bundled> wires;
    private final Cover cover;
    private final OpenAir air;
    private final double[] celsius;
    private final int[] order;

    /** The bundle as it is; settles it once. */
    public OneTried(List<Bundled> wires, Cover cover, OpenAir air) {
        this.wires = List.copyOf(wires);
        this.cover = cover;
        this.air = air;
        BundleSection section = new BundleSection(wires, cover, air);
        this.order = section.anyOrder();
        this.celsius = section.settle(section.ambient(), order).stream()
                .mapToDouble(SteadyState::celsius)
                .toArray();
    }

    /**
     * Where one of the wires settles when it is another.
     *
     * @param place its place in the bundle, from 0
     * @param tried what it is then
     */
    public SteadyState settle(int place, Bundled tried) {
        List<Bundled> changed = new ArrayList<>(wires);
        changed.set(place, tried);
        return new BundleSection(changed, cover, air)
                .settle(celsius, order.clone())
                .get(place);
    }
}
