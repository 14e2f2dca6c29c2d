package org.ohmloom.pack.page;

import java.util.ArrayList;
import java.util.List;
import org.ohmloom.draw.Box;
import org.ohmloom.draw.Extent;
import org.ohmloom.draw.Item;
import org.ohmloom.draw.Layer;
import org.ohmloom.draw.Mark;
import org.ohmloom.draw.Placement;
import org.ohmloom.draw.Scene;

/** Fills page after page with pieces, from top to bottom. */
final class Flow {
    private final Extent area;
    private final List<List<Item>> pages = new ArrayList<>(List.of(new ArrayList<>()));
    private final List<Bookmark> bookmarks = new ArrayList<>();
    private final List<Mention> mentions = new ArrayList<>();
    private double yMm;

    Flow(Extent area) {
        this.area = area;
        this.yMm = area.topMm();
    }

    /** Height of an empty page, mm. */
    double pageMm() {
        return area.heightMm();
    }

    /** How much of the page is filled, mm. */
    double usedMm() {
        return yMm - area.topMm();
    }

    double widthMm() {
        return area.widthMm();
    }

    /** Whether so much, mm, no longer fits on the page. */
    boolean isFull(double neededMm) {
        return yMm > area.topMm() && yMm + neededMm > area.bottomMm() + 1e-6;
    }

    /** Goes on at the top of a new page. */
    void turn() {
        pages.add(new ArrayList<>());
        yMm = area.topMm();
    }

    /** Turns the page when so much, mm, no longer fits. */
    void need(double neededMm) {
        if (isFull(neededMm)) {
            turn();
        }
    }

    /** Leaves room, mm, but not at the top of a page. */
    void gap(double mm) {
        if (yMm > area.topMm()) {
            yMm += mm;
        }
    }

    /** Puts a piece here, on a new page when this one is full. */
    void put(Piece piece) {
        need(piece.heightMm());
        Placement place = Placement.moved(area.leftMm(), yMm);
        for (Mark mark : piece.marks()) {
            pages.get(pages.size() - 1).add(Item.of(layer(mark), mark.placed(place)));
        }
        for (Mention mention : piece.mentions()) {
            Extent extent = mention.extent().moved(area.leftMm(), yMm);
            mentions.add(new Mention(pages.size() - 1, extent, mention.name(), mention.home()));
        }
        yMm += piece.heightMm();
    }

    /** Puts a picture with a piece over the same place, which is at least as high; on a new page when this one is full. */
    void put(Scene picture, Piece piece) {
        need(piece.heightMm());
        Placement place = Placement.moved(area.leftMm(), yMm);
        picture.items().forEach(item -> pages.get(pages.size() - 1).add(item.placed(place)));
        put(piece);
    }

    /** Puts pictures of one line side by side, on a new page when this one is full. */
    void put(List<Scene> scenes, double gapMm) {
        double height = scenes.stream().mapToDouble(Scene::heightMm).max().orElse(0);
        need(height);
        double x = area.leftMm();
        for (Scene scene : scenes) {
            Placement place = Placement.moved(x, yMm);
            scene.items().forEach(item -> pages.get(pages.size() - 1).add(item.placed(place)));
            x += scene.widthMm() + gapMm;
        }
        yMm += height;
    }

    /** A ground without an edge lies below everything, so that it hides no line of the row before it. */
    private static Layer layer(Mark mark) {
        return mark instanceof Box box && box.fill().edge().isEmpty() ? Layer.ZONES : Layer.SHEET;
    }

    /** Remembers this place under a title. */
    void bookmark(String title) {
        bookmarks.add(new Bookmark(title, pages.size() - 1));
    }

    List<List<Item>> pages() {
        return pages;
    }

    List<Bookmark> bookmarks() {
        return bookmarks;
    }

    /** Where elements are named. */
    List<Mention> mentions() {
        return mentions;
    }
}
