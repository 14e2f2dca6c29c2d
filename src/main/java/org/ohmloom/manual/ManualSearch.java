package org.ohmloom.manual;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds pages by words in their text. A page must hold every word typed, or a word that begins with it; pages are ranked
 * by how often it stands there against how rare it is in the manual and how long the page is (BM25: Robertson and Zaragoza,
 * The Probabilistic Relevance Framework, 2009, equation 3.15), words of the title counting as many.
 */
public final class ManualSearch {

    /** How soon further occurrences stop counting; the usual value of the formula. */
    private static final double SATURATION = 1.2;
    /** How much the length of a page counts; the usual value of the formula. */
    private static final double LENGTH_SHARE = 0.75;
    /** How many times a word of the title counts. */
    private static final int TITLE_WEIGHT = 12;
    /** What a word counts that only begins as the one typed. */
    private static final double BEGINNING = 0.4;

    private static final int PASSAGE_LETTERS = 150;

    private final List<Entry> entries = new ArrayList<>();
    private final double meanLength;

    private record Entry(Page page, String text, Map<String, Integer> counts, int length) {}

    /** A search in all pages of a manual. */
    public ManualSearch(Manual manual) {
        for (Page page : manual.pages()) {
            String text = page.plainText();
            Map<String, Integer> counts = new HashMap<>();
            List<String> words = SearchWords.of(text);
            words.forEach(word -> counts.merge(word, 1, Integer::sum));
            SearchWords.of(page.title()).forEach(word -> counts.merge(word, TITLE_WEIGHT, Integer::sum));
            entries.add(new Entry(page, text, counts, words.size()));
        }
        meanLength = entries.stream().mapToInt(Entry::length).average().orElse(1);
    }

    /** The pages that hold every word of a text, best first; none for a text without words. */
    public List<Hit> find(String typed) {
        List<String> words = SearchWords.of(typed).stream().distinct().toList();
        if (words.isEmpty()) {
            return List.of();
        }
        double[] rarity = words.stream().mapToDouble(this::rarity).toArray();
        List<Hit> hits = new ArrayList<>();
        for (Entry entry : entries) {
            double score = 0;
            boolean all = true;
            for (int at = 0; at < words.size(); at++) {
                double often = often(entry, words.get(at));
                all &= often > 0;
                double length = 1 - LENGTH_SHARE + LENGTH_SHARE * entry.length() / meanLength;
                score += rarity[at] * often * (SATURATION + 1) / (often + SATURATION * length);
            }
            if (all) {
                hits.add(new Hit(entry.page(), score, passage(entry.text(), words)));
            }
        }
        hits.sort(Comparator.comparingDouble(Hit::score).reversed().thenComparing(hit -> hit.page()
                .id()));
        return hits;
    }

    private double rarity(String typed) {
        long holding = entries.stream().filter(entry -> often(entry, typed) > 0).count();
        return Math.log(1 + (entries.size() - holding + 0.5) / (holding + 0.5));
    }

    private static double often(Entry entry, String typed) {
        double often = 0;
        for (Map.Entry<String, Integer> each : entry.counts().entrySet()) {
            if (SearchWords.fits(each.getKey(), typed)) {
                often += each.getValue() * (each.getKey().equals(typed) ? 1 : BEGINNING);
            }
        }
        return often;
    }

    /** The line of the text that holds most of the words, cut round the first of them. */
    private static String passage(String text, List<String> words) {
        String best = "";
        long most = -1;
        for (String line : text.lines().skip(1).toList()) {
            List<String> there = SearchWords.of(line);
            long held = words.stream()
                    .filter(typed -> there.stream().anyMatch(word -> SearchWords.fits(word, typed)))
                    .count();
            if (held > most) {
                most = held;
                best = line;
            }
        }
        return cut(best.strip(), words);
    }

    private static String cut(String line, List<String> words) {
        if (line.length() <= PASSAGE_LETTERS) {
            return line;
        }
        int first = SearchWords.places(line).stream()
                .filter(place -> words.stream().anyMatch(typed -> SearchWords.fits(place.word(), typed)))
                .mapToInt(SearchWords.Place::start)
                .findFirst()
                .orElse(0);
        int start = first <= PASSAGE_LETTERS / 2 ? 0 : line.indexOf(' ', first - PASSAGE_LETTERS / 2) + 1;
        int end = start + PASSAGE_LETTERS >= line.length()
                ? line.length()
                : line.lastIndexOf(' ', start + PASSAGE_LETTERS);
        return (start > 0 ? "… " : "")
                + line.substring(start, Math.max(start, end))
                + (end < line.length() ? " …" : "");
    }
}
