package org.ohmloom.workbench.canvas;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.IntConsumer;
import org.jspecify.annotations.Nullable;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Line;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;

/**
 * Answers what lies where in a scene. A small scene is asked itself; for a large one a grid of cells and a table of elements are
 * made in the background, and the scene is asked until they are there.
 */
final class SceneLookup {

    /** Count of items from which a scene is large. */
    static final int LARGE = 6000;

    private final Scene scene;
    private volatile @Nullable Grid grid;

    /**
     * A lookup.
     *
     * @param background makes the grid
     */
    SceneLookup(Scene scene, Executor background) {
        this.scene = scene;
        if (scene.items().size() >= LARGE) {
            background.execute(() -> grid = new Grid(scene));
        }
    }

    /** The elements at a point, topmost first, each once; the same as {@link Scene#hit}. */
    List<String> hit(Point point, double toleranceMm) {
        Grid known = grid;
        return known == null ? scene.hit(point.xMm(), point.yMm(), toleranceMm) : known.hit(point, toleranceMm);
    }

    /** The items that stand for an element. */
    List<Item> itemsOf(String element) {
        Grid known = grid;
        return known == null ? scene.itemsOf(element) : known.byElement.getOrDefault(element, List.of());
    }

    /** The smallest rectangle around everything that stands for an element. */
    Optional<Extent> bounds(String element) {
        return Extent.union(
                itemsOf(element).stream().map(item -> item.mark().bounds()).toList());
    }

    /** The description of an element. */
    Optional<String> description(String element) {
        return itemsOf(element).stream()
                .flatMap(item -> item.description().stream())
                .findFirst();
    }

    /** Items by the cells they reach into; lines by each of their stretches, so that long ones stay out of most cells. */
    private static final class Grid {

        private static final int CELLS = 160;

        private final List<Item> items;
        private final double cellMm;
        private final int columns;
        private final int rows;
        private final int[] starts;
        private final int[] held;
        private final Map<String, List<Item>> byElement = new HashMap<>();

        Grid(Scene scene) {
            this.items = scene.items();
            this.cellMm = Math.max(scene.widthMm(), scene.heightMm()) / CELLS;
            this.columns = 1 + (int) (scene.widthMm() / cellMm);
            this.rows = 1 + (int) (scene.heightMm() / cellMm);
            this.starts = new int[columns * rows + 1];
            for (Item item : items) {
                item.element().ifPresent(id -> {
                    byElement.computeIfAbsent(id, each -> new ArrayList<>()).add(item);
                    cells(item, cell -> starts[cell + 1]++);
                });
            }
            for (int k = 1; k < starts.length; k++) {
                starts[k] += starts[k - 1];
            }
            this.held = new int[starts[starts.length - 1]];
            int[] next = starts.clone();
            for (int k = 0; k < items.size(); k++) {
                int number = k;
                if (items.get(k).element().isPresent()) {
                    cells(items.get(k), cell -> held[next[cell]++] = number);
                }
            }
        }

        private void cells(Item item, IntConsumer cell) {
            if (item.mark() instanceof Line line) {
                List<Point> points = line.points();
                for (int k = 1; k < points.size(); k++) {
                    Extent stretch = Extent.around(points.subList(k - 1, k + 1));
                    cells(stretch.grown(line.widthMm() / 2), cell);
                }
            } else {
                cells(item.mark().bounds(), cell);
            }
        }

        private void cells(Extent extent, IntConsumer cell) {
            int right = place(extent.rightMm(), columns);
            int bottom = place(extent.bottomMm(), rows);
            for (int row = place(extent.topMm(), rows); row <= bottom; row++) {
                for (int column = place(extent.leftMm(), columns); column <= right; column++) {
                    cell.accept(row * columns + column);
                }
            }
        }

        private int place(double mm, int count) {
            return Math.max(0, Math.min(count - 1, (int) Math.floor(mm / cellMm)));
        }

        List<String> hit(Point point, double toleranceMm) {
            int[] near = new int[0];
            List<int[]> found = new ArrayList<>();
            cells(
                    Extent.at(point.xMm(), point.yMm(), 0, 0).grown(toleranceMm),
                    cell -> found.add(Arrays.copyOfRange(held, starts[cell], starts[cell + 1])));
            for (int[] each : found) {
                int before = near.length;
                near = Arrays.copyOf(near, before + each.length);
                System.arraycopy(each, 0, near, before, each.length);
            }
            Arrays.sort(near);
            Set<String> hit = new LinkedHashSet<>();
            for (int k = near.length - 1; k >= 0; k--) {
                Item item = items.get(near[k]);
                boolean again = k + 1 < near.length && near[k] == near[k + 1];
                if (!again && item.mark().hits(point, toleranceMm)) {
                    item.element().ifPresent(hit::add);
                }
            }
            return List.copyOf(hit);
        }
    }
}
