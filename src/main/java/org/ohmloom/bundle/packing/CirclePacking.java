package org.ohmloom.bundle.packing;

import static org.ohmloom.units.Require.positive;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * Finds a small circle round given circles that do not overlap: the ideal bundle of wires laid straight and parallel.
 *
 * <p>No formula gives the smallest one, so it is searched for: wires begin on a hexagonal grid, in rings, or anywhere, the
 * thickest inmost or mixed; then the circle shrinks step by step while wires that overlap push each other apart
 * ({@link Squeeze}). What is left of overlaps is scaled away at the end, so the circle is always large enough, and never
 * smaller than the two largest wires side by side. The same wires give the same answer.
 *
 * <p>A real bundle is larger: this is its lower bound.
 */
public final class CirclePacking {

    /** More wires than this begin from one hexagonal grid only and are squeezed less: a round heap is as good as any. */
    private static final int MANY = 150;

    /** More wires than this begin from fewer places: grid and rings serve them well. */
    private static final int SEVERAL = 24;

    private static final long SEED = 61;

    private CirclePacking() {}

    /**
     * Packs wires.
     *
     * @param diametersMm their diameters, mm, each more than 0
     */
    public static CrossSection of(List<Double> diametersMm) {
        diametersMm.forEach(diameter -> positive(diameter, "diameter of a wire"));
        if (diametersMm.isEmpty()) {
            return new CrossSection(0, List.of());
        }
        int count = diametersMm.size();
        Integer[] order = IntStream.range(0, count).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparing((Integer k) -> -diametersMm.get(k)));
        double[] radii = new double[count];
        for (int k = 0; k < count; k++) {
            radii[k] = diametersMm.get(order[k]) / 2;
        }
        Squeeze best = best(radii);
        CrossSection.Disc[] discs = new CrossSection.Disc[count];
        for (int k = 0; k < count; k++) {
            discs[order[k]] = new CrossSection.Disc(best.x()[k], best.y()[k], 2 * radii[k]);
        }
        return new CrossSection(2 * best.radius(), List.of(discs));
    }

    private static Squeeze best(double[] radii) {
        Squeeze best = null;
        for (Squeeze each : starts(radii)) {
            each.run(radii.length > MANY);
            if (best == null || each.radius() < best.radius()) {
                best = each;
            }
        }
        return best;
    }

    /** Where to begin; radii come largest first. */
    private static List<Squeeze> starts(double[] radii) {
        List<Squeeze> starts = new ArrayList<>();
        Random random = new Random(SEED);
        double spacing = 2 * radii[0];
        double half = spacing / 2;
        starts.add(onGrid(radii, 0, 0));
        if (radii.length <= MANY) {
            starts.add(onGrid(radii, half, 0));
            starts.add(onGrid(radii, half, half / Math.sqrt(3)));
            starts.add(inRings(radii, 1));
            starts.add(inRings(radii, 2));
            starts.add(inRings(radii, 3));
        }
        if (radii.length <= SEVERAL) {
            starts.add(inRings(radii, 4));
            starts.add(inRings(radii, 5));
            for (int k = 0; k < 6; k++) {
                starts.add(anywhere(radii, random));
            }
        }
        return starts;
    }

    /** The places of a hexagonal grid nearest to a centre, the thickest wires inmost. */
    private static Squeeze onGrid(double[] radii, double centreX, double centreY) {
        double spacing = 2 * radii[0];
        int reach = (int) Math.ceil(Math.sqrt(radii.length)) + 2;
        List<double[]> places = new ArrayList<>();
        for (int row = -reach; row <= reach; row++) {
            for (int column = -reach; column <= reach; column++) {
                places.add(new double[] {
                    (column + 0.5 * (row & 1)) * spacing - centreX, row * spacing * Math.sqrt(3) / 2 - centreY
                });
            }
        }
        places.sort(Comparator.comparingDouble((double[] place) -> Math.hypot(place[0], place[1]))
                .thenComparingDouble(place -> Math.atan2(place[1], place[0])));
        double[] x = new double[radii.length];
        double[] y = new double[radii.length];
        for (int k = 0; k < radii.length; k++) {
            x[k] = places.get(k)[0];
            y[k] = places.get(k)[1];
        }
        return new Squeeze(radii, x, y);
    }

    /** Rings round so many wires in the middle, each ring as full as it goes. */
    private static Squeeze inRings(double[] radii, int inMiddle) {
        double[] x = new double[radii.length];
        double[] y = new double[radii.length];
        double thickest = radii[0];
        double ring = inMiddle == 1 ? 0 : thickest / Math.sin(Math.PI / inMiddle);
        int next = 0;
        int room = inMiddle;
        while (next < radii.length) {
            int here = Math.min(room, radii.length - next);
            for (int k = 0; k < here; k++) {
                double angle = 2 * Math.PI * (k + 0.5 * (inMiddle & 1)) / here;
                x[next] = ring * Math.cos(angle);
                y[next] = ring * Math.sin(angle);
                next++;
            }
            ring += 2 * thickest;
            room = (int) Math.floor(Math.PI / Math.asin(thickest / ring) + 1e-9);
        }
        return new Squeeze(radii, x, y);
    }

    private static Squeeze anywhere(double[] radii, Random random) {
        double area = Arrays.stream(radii).map(radius -> radius * radius).sum();
        double reach = 1.3 * Math.sqrt(area);
        double[] x = new double[radii.length];
        double[] y = new double[radii.length];
        for (int k = 0; k < radii.length; k++) {
            double distance = reach * Math.sqrt(random.nextDouble());
            double angle = 2 * Math.PI * random.nextDouble();
            x[k] = distance * Math.cos(angle);
            y[k] = distance * Math.sin(angle);
        }
        return new Squeeze(radii, x, y);
    }
}
