package org.ohmloom.draw.wiring;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The upright stretches of lines between two columns: each on a track, none upon another, and no level stretch upon another either. A
 * line that arrives at the height another leaves at turns after that; where two would each have to wait for the other, one takes a step
 * in between.
 */
final class Channel {

    /** Distance of two tracks, mm. */
    static final double TRACK_MM = 1.8;

    private static final double NEAR_MM = 0.1;
    private static final double CLEAR_MM = 1;

    private static final class Leg {
        private final Hop hop;
        private final double fromMm;
        private final double toMm;
        private final boolean half;
        private final boolean second;

        private Leg(Hop hop, double fromMm, double toMm, boolean half, boolean second) {
            this.hop = hop;
            this.fromMm = fromMm;
            this.toMm = toMm;
            this.half = half;
            this.second = second;
        }
    }

    private record Used(double topMm, double bottomMm) {}

    private final List<List<Used>> tracks = new ArrayList<>();
    private final Map<Hop, List<double[]>> turns = new LinkedHashMap<>();

    Channel(List<Hop> hops) {
        List<Leg> open = new ArrayList<>();
        hops.stream()
                .filter(hop -> !hop.isLevel())
                .forEach(hop -> open.add(new Leg(hop, hop.fromMm(), hop.toMm(), false, false)));
        open.sort(ORDER);
        Map<Leg, Integer> least = new LinkedHashMap<>();
        while (!open.isEmpty()) {
            Leg next =
                    open.stream().filter(leg -> isFree(leg, open)).findFirst().orElse(null);
            if (next == null) {
                split(open);
                continue;
            }
            open.remove(next);
            int track = track(next, least.getOrDefault(next, 0));
            turns.computeIfAbsent(next.hop, hop -> new ArrayList<>()).add(new double[] {track, next.fromMm, next.toMm});
            for (Leg later : open) {
                if (waits(later, next)) {
                    least.merge(later, track + 1, Math::max);
                }
            }
        }
    }

    /** Going down, the lowest turn first; going up, the highest: so they cross least. */
    private static final Comparator<Leg> ORDER = Comparator.comparing((Leg leg) -> leg.toMm < leg.fromMm)
            .thenComparingDouble(leg -> leg.toMm > leg.fromMm ? -leg.fromMm : leg.fromMm);

    /** Whether one has to turn after the other: it arrives where that leaves, or goes on with the same line. */
    private static boolean waits(Leg later, Leg sooner) {
        if (later.hop.equals(sooner.hop)) {
            return later.second && !sooner.second;
        }
        return Math.abs(sooner.fromMm - later.toMm) < NEAR_MM;
    }

    private static boolean isFree(Leg leg, List<Leg> open) {
        return open.stream().noneMatch(other -> waits(leg, other));
    }

    /** Breaks a ring of lines that wait for each other: the first goes half way first, to a height that no other has. */
    private static void split(List<Leg> open) {
        int k = 0;
        while (open.get(k).half) {
            k++;
        }
        Leg leg = open.remove(k);
        double between = leg.toMm + Stand.GRID_MM / 2;
        open.add(k, new Leg(leg.hop, leg.fromMm, between, true, false));
        open.add(new Leg(leg.hop, between, leg.toMm, true, true));
    }

    private int track(Leg leg, int least) {
        double top = Math.min(leg.fromMm, leg.toMm) - CLEAR_MM;
        double bottom = Math.max(leg.fromMm, leg.toMm) + CLEAR_MM;
        int number = least;
        while (number < tracks.size()
                && tracks.get(number).stream().anyMatch(used -> used.topMm() < bottom && top < used.bottomMm())) {
            number++;
        }
        while (tracks.size() <= number) {
            tracks.add(new ArrayList<>());
        }
        tracks.get(number).add(new Used(top, bottom));
        return number;
    }

    /** Width of all tracks, mm. */
    double widthMm() {
        return tracks.size() * TRACK_MM;
    }

    /** Upright stretches of a line in order: track, height it comes at and height it goes on at. */
    List<double[]> turns(Hop hop) {
        return turns.getOrDefault(hop, List.of());
    }
}
