package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;

/**
 * A picture in millimetres: marks with the elements they stand for. Immutable; drawing, hit testing, tooltips and "zoom
 * to" all ask the same scene. The origin is the upper left corner.
 *
 * @param widthMm  width, mm, more than 0
 * @param heightMm height, mm, more than 0
 * @param items    items, lowest layer first, within a layer in the order they are painted
 */
public record Scene(double widthMm, double heightMm, List<Item> items) {

    public Scene {
        if (!(widthMm > 0 && heightMm > 0)) {
            throw new IllegalArgumentException("a scene needs a size, had " + widthMm + " by " + heightMm + " mm");
        }
        items = items.stream().sorted(Comparator.comparing(Item::layer)).toList();
    }

    /** The whole rectangle of the scene. */
    public Extent extent() {
        return new Extent(0, 0, widthMm, heightMm);
    }

    /**
     * The elements at a point, topmost first, each once.
     *
     * @param xMm         to the right, mm
     * @param yMm         downwards, mm
     * @param toleranceMm how far beside it still counts, mm, 0 or more
     */
    public List<String> hit(double xMm, double yMm, double toleranceMm) {
        Point point = new Point(xMm, yMm);
        Set<String> found = new LinkedHashSet<>();
        for (int k = items.size() - 1; k >= 0; k--) {
            Item item = items.get(k);
            if (item.element().isPresent() && item.mark().hits(point, toleranceMm)) {
                found.add(item.element().get());
            }
        }
        return List.copyOf(found);
    }

    /** The items that stand for an element, in the order they are painted. */
    public List<Item> itemsOf(String elementId) {
        return items.stream()
                .filter(item -> item.element().filter(elementId::equals).isPresent())
                .toList();
    }

    /** The smallest rectangle around everything that stands for an element; empty when it is not in the scene. */
    public Optional<Extent> bounds(String elementId) {
        return Extent.union(
                itemsOf(elementId).stream().map(item -> item.mark().bounds()).toList());
    }

    /** Ids of the elements in the scene, in the order they are painted. */
    public List<String> elements() {
        return items.stream()
                .flatMap(item -> item.element().stream())
                .distinct()
                .toList();
    }

    /** The description of an element in plain words, if it has one. */
    public Optional<String> description(String elementId) {
        return itemsOf(elementId).stream()
                .flatMap(item -> item.description().stream())
                .findFirst();
    }

    /** This scene without the layers that are not wanted. */
    public Scene only(Set<Layer> layers) {
        return new Scene(
                widthMm,
                heightMm,
                items.stream().filter(item -> layers.contains(item.layer())).toList());
    }

    /** This scene with more items on top of their layers. */
    public Scene with(List<Item> more) {
        List<Item> all = new ArrayList<>(items);
        all.addAll(more);
        return new Scene(widthMm, heightMm, all);
    }

    /**
     * This scene with other texts in the places of its own, on the drawing and in descriptions.
     *
     * @param words gives the text for one; a text that changes its length changes its width with it
     */
    public Scene saying(UnaryOperator<String> words) {
        return new Scene(
                widthMm,
                heightMm,
                items.stream().map(item -> item.saying(words)).toList());
    }

    /** The scene as text, one line for each item; equal scenes give equal text. */
    public String dump() {
        return items.stream()
                .map(item -> Dump.word(item.layer()) + " " + item.mark().dump()
                        + item.element().map(id -> " [" + id + "]").orElse("")
                        + "\n")
                .collect(Collectors.joining("", "scene " + Dump.mm(widthMm) + "x" + Dump.mm(heightMm) + "\n", ""));
    }
}
