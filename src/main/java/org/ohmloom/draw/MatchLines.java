package org.ohmloom.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import org.ohmloom.model.BreakoutId;
import org.ohmloom.model.Connector;

/** The match lines where a board is cut into sheets: a letter for each cut, and at each side the place of the other. */
final class MatchLines {

    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final Ties ties;
    private final Lettering lettering;

    MatchLines(Ties ties, Lettering lettering) {
        this.ties = ties;
        this.lettering = lettering;
    }

    /** The letters of all cuts between these pieces, and of the ties that close loops within one, in drawing order. */
    Elsewhere lettered(List<SortedSet<BreakoutId>> pieces) {
        Map<String, String> letters = new LinkedHashMap<>();
        for (SortedSet<BreakoutId> piece : pieces) {
            for (Tree tree : Tree.all(piece, ties)) {
                for (BreakoutId breakout : tree.breakouts()) {
                    for (Tie tie : tree.loops()) {
                        if (tie.touches(breakout) && tie.segment().isPresent()) {
                            letters.computeIfAbsent(tie.id(), id -> letter(letters.size()));
                        }
                    }
                }
            }
        }
        return new Elsewhere(letters, true);
    }

    /** A to Z without I and O, then AA, AB and so on. */
    static String letter(int number) {
        int count = LETTERS.length();
        String last = String.valueOf(LETTERS.charAt(number % count));
        return number < count ? last : letter(number / count - 1) + last;
    }

    private record Side(int sheet, String tie, Point at) {}

    /** The sheets with the place of the other side written at each cut. */
    List<List<Item>> placed(List<List<Item>> sheets, Paper paper) {
        List<Side> sides = new ArrayList<>();
        for (int k = 0; k < sheets.size(); k++) {
            for (Item item : sheets.get(k)) {
                int sheet = k;
                place(item).ifPresent(text -> sides.add(new Side(sheet, tie(item), text.at())));
            }
        }
        List<List<Item>> placed = new ArrayList<>();
        for (int k = 0; k < sheets.size(); k++) {
            List<Item> items = new ArrayList<>();
            for (Item item : sheets.get(k)) {
                items.add(settled(item, k, sides, paper));
            }
            placed.add(items);
        }
        return placed;
    }

    private Item settled(Item item, int sheet, List<Side> sides, Paper paper) {
        Optional<Text> place = place(item);
        if (place.isEmpty()) {
            return item;
        }
        Text text = place.get();
        String words = sides.stream()
                .filter(side -> side.tie().equals(tie(item)))
                .filter(side -> side.sheet() != sheet || !side.at().equals(text.at()))
                .findFirst()
                .map(side -> words(side, sheet, paper))
                .orElse("");
        Text settled = lettering.text(words, text.at(), text.heightMm(), text.anchor(), text.weight(), text.ink());
        return new Item(item.layer(), settled, item.element(), item.description());
    }

    private static String words(Side other, int sheet, Paper paper) {
        String where = other.sheet() == sheet ? "this sheet" : "sheet\u00a0" + (other.sheet() + 1);
        String zone = GridReference.of(paper, other.at());
        return where + (zone.isEmpty() ? "" : ", zone\u00a0" + zone);
    }

    private static Optional<Text> place(Item item) {
        return item.mark() instanceof Text text && text.text().equals(Elsewhere.PLACE)
                ? Optional.of(text)
                : Optional.empty();
    }

    /** The tie that an item at a cut stands for: a segment's own, or that of the pair a connector belongs to. */
    private String tie(Item item) {
        String element = item.element().orElse("");
        return ties.all().stream()
                .filter(tie -> tie.pair().stream().map(Connector::id).anyMatch(id -> id.value()
                        .equals(element)))
                .map(Tie::id)
                .findFirst()
                .orElse(element);
    }
}
