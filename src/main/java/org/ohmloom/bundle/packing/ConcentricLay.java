package org.ohmloom.bundle.packing;

import static org.ohmloom.units.Require.positive;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A plan for twisting wires in concentric layers round a core: 1-6-12-18 round one wire, or more by so much as the core is
 * thicker. Each layer is laid against the one beneath it, the outermost left-handed by the habit of the trade; fillers
 * complete a layer to keep it round.
 *
 * <p>Wires of different thickness are laid in places for the thickest; the thickest wires lie inmost. Of cores of one to
 * five wires the one with the fewest fillers is taken, then the one of the least diameter. Layer k round a core of m wires:
 * pitch circle (R(m) + 2k - 1) d with R(m) the ratio of m circles in a circle; the first layer holds so many wires as fit
 * on it, each further one six more.
 *
 * @param placeMm  diameter of one place: of the thickest wire, mm
 * @param layers   the core and the layers, inmost first
 */
public record ConcentricLay(double placeMm, List<Layer> layers) {

    /** Diameter of the circle round 1 to 5 equal circles over theirs: closed forms. */
    private static final List<Double> CORE_RATIOS =
            List.of(1.0, 2.0, 1 + 2 / Math.sqrt(3), 1 + Math.sqrt(2), 1 + 1 / Math.sin(Math.PI / 5));

    private static final int MORE_IN_EACH_LAYER = 6;

    private static final double NOISE = 1e-9;

    /** Which way a layer turns. */
    public enum Hand {
        STRAIGHT,
        LEFT,
        RIGHT
    }

    /**
     * The core, or one layer.
     *
     * @param places          places in it
     * @param wires           positions of its wires in the list of the plan
     * @param fillers         places without a wire, to be filled
     * @param pitchDiameterMm diameter of the circle through the middles of its wires, mm
     * @param outsideMm       diameter over it, mm
     * @param layLengthMm     length of one full turn, mm; infinite in a core that lies straight
     * @param hand            which way it turns
     */
    public record Layer(
            int places,
            List<Integer> wires,
            int fillers,
            double pitchDiameterMm,
            double outsideMm,
            double layLengthMm,
            Hand hand) {
        public Layer {
            wires = List.copyOf(wires);
        }
    }

    public ConcentricLay {
        layers = List.copyOf(layers);
    }

    /**
     * Plans the layers.
     *
     * @param diametersMm diameters of the wires, mm, at least one
     * @param layLengthMm length of one full turn of the outermost layer, mm, more than 0; inner layers turn in proportion to
     *                    their diameters
     */
    public static ConcentricLay of(List<Double> diametersMm, double layLengthMm) {
        positive(layLengthMm, "lay length");
        positive(diametersMm.size(), "count of wires");
        List<Integer> order = new ArrayList<>();
        for (int k = 0; k < diametersMm.size(); k++) {
            order.add(k);
        }
        order.sort((one, other) -> Double.compare(diametersMm.get(other), diametersMm.get(one)));
        double placeMm = positive(Collections.max(diametersMm), "diameter of a wire");
        ConcentricLay best = null;
        for (int core = 1; core <= Math.min(CORE_RATIOS.size(), order.size()); core++) {
            ConcentricLay plan = round(core, order, placeMm, layLengthMm);
            if (best == null
                    || plan.fillers() < best.fillers()
                    || (plan.fillers() == best.fillers() && plan.diameterMm() < best.diameterMm() - NOISE)) {
                best = plan;
            }
        }
        return best;
    }

    private static ConcentricLay round(int core, List<Integer> order, double placeMm, double layLengthMm) {
        double coreRatio = CORE_RATIOS.get(core - 1);
        List<Integer> counts = new ArrayList<>(List.of(core));
        int placed = core;
        while (placed < order.size()) {
            int room = counts.size() == 1
                    ? (int) Math.floor(Math.PI / Math.asin(1 / (coreRatio + 1)) + NOISE)
                    : counts.get(counts.size() - 1) + MORE_IN_EACH_LAYER;
            counts.add(room);
            placed += room;
        }
        double outerRatio = coreRatio + 2 * (counts.size() - 1);
        List<Layer> layers = new ArrayList<>();
        int next = 0;
        for (int k = 0; k < counts.size(); k++) {
            int here = Math.min(counts.get(k), order.size() - next);
            double outsideRatio = coreRatio + 2 * k;
            boolean straight = k == 0 && core == 1;
            layers.add(new Layer(
                    counts.get(k),
                    order.subList(next, next + here),
                    counts.get(k) - here,
                    straight ? 0 : (outsideRatio - 1) * placeMm,
                    outsideRatio * placeMm,
                    straight ? Double.POSITIVE_INFINITY : layLengthMm * outsideRatio / outerRatio,
                    straight ? Hand.STRAIGHT : (counts.size() - 1 - k) % 2 == 0 ? Hand.LEFT : Hand.RIGHT));
            next += here;
        }
        return new ConcentricLay(placeMm, layers);
    }

    /** Diameter over all layers, mm. */
    public double diameterMm() {
        return layers.get(layers.size() - 1).outsideMm();
    }

    /** Diameter of the circle through the middles of the outermost wires, mm; 0 for a single wire. */
    public double outermostPitchDiameterMm() {
        return layers.get(layers.size() - 1).pitchDiameterMm();
    }

    /** Places without a wire. */
    public int fillers() {
        return layers.stream().mapToInt(Layer::fillers).sum();
    }

    /** How many places each layer has, as in "1-6-12". */
    public String words() {
        StringBuilder words = new StringBuilder();
        layers.forEach(layer -> words.append(words.length() == 0 ? "" : "-").append(layer.places()));
        return words.toString();
    }
}
