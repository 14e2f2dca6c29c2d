package org.ohmloom.workbench;

import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Brings a picture down to a table of few colours, which makes its file a third as large. Neighbouring colours are taken together
 * first; then those are chosen that bring the whole nearest to what it was, so that a thin line keeps its colour beside wide grounds.
 */
final class FewColours {

    private static final int COLOURS = 64;
    /** Levels of each of red, green and blue that are told apart: 256 / 8. */
    private static final int STEP = 8;

    private FewColours() {}

    static BufferedImage of(BufferedImage picture) {
        Map<Integer, Integer> exact = new HashMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                exact.merge(picture.getRGB(x, y) & 0xFFFFFF, 1, Integer::sum);
            }
        }
        Map<Integer, Integer> counts = new HashMap<>();
        // The most frequent colour of a cell stands for it: grounds and lines keep theirs.
        Map<Integer, Integer> standing = new HashMap<>();
        exact.forEach((rgb, count) -> {
            counts.merge(cell(rgb), count, Integer::sum);
            standing.merge(cell(rgb), rgb, (one, other) -> frequent(exact, one, other));
        });
        List<Integer> kept = chosen(counts, standing);
        return indexed(picture, kept);
    }

    /** One colour after the other, each the one whose pixels would be furthest off without it. */
    private static List<Integer> chosen(Map<Integer, Integer> counts, Map<Integer, Integer> standing) {
        List<Integer> cells = counts.keySet().stream().sorted().toList();
        double[] off = new double[cells.size()];
        Arrays.fill(off, Double.MAX_VALUE);
        List<Integer> kept = new ArrayList<>();
        while (kept.size() < Math.min(COLOURS, cells.size())) {
            int worst = 0;
            double most = -1;
            for (int at = 0; at < off.length; at++) {
                double weight = kept.isEmpty() ? counts.get(cells.get(at)) : counts.get(cells.get(at)) * off[at];
                if (weight > most) {
                    most = weight;
                    worst = at;
                }
            }
            int next = standing.get(cells.get(worst));
            kept.add(next);
            for (int at = 0; at < off.length; at++) {
                off[at] = Math.min(off[at], away(standing.get(cells.get(at)), next));
            }
        }
        return kept;
    }

    private static int away(int one, int other) {
        int red = (one >> 16) - (other >> 16);
        int green = (one >> 8 & 0xFF) - (other >> 8 & 0xFF);
        int blue = (one & 0xFF) - (other & 0xFF);
        return 3 * red * red + 4 * green * green + 2 * blue * blue;
    }

    private static int frequent(Map<Integer, Integer> counts, int one, int other) {
        int more = Integer.compare(counts.get(one), counts.get(other));
        return more > 0 || more == 0 && one < other ? one : other;
    }

    private static BufferedImage indexed(BufferedImage picture, List<Integer> kept) {
        int[] table = kept.stream().mapToInt(Integer::intValue).toArray();
        IndexColorModel model = new IndexColorModel(8, table.length, table, 0, false, -1, DataBuffer.TYPE_BYTE);
        BufferedImage result =
                new BufferedImage(picture.getWidth(), picture.getHeight(), BufferedImage.TYPE_BYTE_INDEXED, model);
        Map<Integer, Integer> nearest = new HashMap<>();
        for (int y = 0; y < picture.getHeight(); y++) {
            for (int x = 0; x < picture.getWidth(); x++) {
                int rgb = picture.getRGB(x, y) & 0xFFFFFF;
                int index = nearest.computeIfAbsent(rgb, colour -> nearest(colour, table));
                result.getRaster().setSample(x, y, 0, index);
            }
        }
        return result;
    }

    private static int nearest(int rgb, int[] table) {
        int best = 0;
        int least = Integer.MAX_VALUE;
        for (int at = 0; at < table.length; at++) {
            int away = away(rgb, table[at]);
            if (away < least) {
                least = away;
                best = at;
            }
        }
        return best;
    }

    private static int cell(int rgb) {
        return (rgb >> 16) / STEP << 16 | (rgb >> 8 & 0xFF) / STEP << 8 | (rgb & 0xFF) / STEP;
    }
}
