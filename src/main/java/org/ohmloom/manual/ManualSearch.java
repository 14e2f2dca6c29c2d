package org.ohmloom.manual;

import java.util.ArrayList;
import java.util.Arrays;
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

    private record Line(String text, List<String> words) {}

    private record Entry(Page page, List<Line> lines, Map<String, Integer> counts, int length) {}

    /** A search in all pages of a manual. */
    public ManualSearch(Manual manual) {
        for (Page page : manual.pages()) {
            List<Line> lines = page.plainText()
                    .lines()
                    .map(text -> new Line(text, SearchWords.of(text)))
                    .toList();
            Map<String, Integer> counts = new HashMap<>();
            lines.forEach(line -> line.words().forEach(word -> counts.merge(word, 1, Integer::sum)));
            int length = counts.values().stream().mapToInt(Integer::intValue).sum();
            SearchWords.of(page.title()).forEach(word -> counts.merge(word, TITLE_WEIGHT, Integer::sum));
            entries.add(new Entry(page, lines, counts, length));
        }
        meanLength = entries.stream().mapToInt(Entry::length).average().orElse(1);
    }

    /** The pages that hold every word of a text, best first; none for a text without words. */
    public List<Hit> find(String typed) {
        List<String> words = SearchWords.of(typed).stream().distinct().toList();
        if (words.isEmpty()) {
            return List.of();
        }
        List<double[]> often = words.stream().map(this::often).toList();
        double[] rarity = often.stream().mapToDouble(this::rarity).toArray();
        List<Hit> hits = new ArrayList<>();
        for (int page = 0; page < entries.size(); page++) {
            int at = page;
            if (often.stream().allMatch(counts -> counts[at] > 0)) {
                Entry entry = entries.get(page);
                double length = 1 - LENGTH_SHARE + LENGTH_SHARE * entry.length() / meanLength;
                double score = 0;
                for (int word = 0; word < rarity.length; word++) {
                    double here = often.get(word)[page];
                    score += rarity[word] * here * (SATURATION + 1) / (here + SATURATION * length);
                }
                hits.add(new Hit(entry.page(), score, passage(entry.lines(), words)));
            }
        }
        hits.sort(Comparator.comparingDouble(Hit::score).reversed().thenComparing(hit -> hit.page()
                .id()));
        return hits;
    }

    private double rarity(double[] often) {
        long holding = Arrays.stream(often).filter(count -> count > 0).count();
        return Math.log(1 + (entries.size() - holding + 0.5) / (holding + 0.5));
    }

    /** How often each page holds a word. */
    private double[] often(String typed) {
        return entries.stream().mapToDouble(entry -> often(entry, typed)).toArray();
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

    /** The line below the title that holds most of the words, cut round the first of them. */
    private static String passage(List<Line> lines, List<String> words) {
        String best = "";
        long most = -1;
        for (Line line : lines.subList(Math.min(1, lines.size()), lines.size())) {
            long held = words.stream()
                    .filter(typed -> line.words().stream().anyMatch(word -> SearchWords.fits(word, typed)))
                    .count();
            if (held > most) {
                most = held;
                best = line.text();
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
