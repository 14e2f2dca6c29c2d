package org.ohmloom.draw.form;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.ohmloom.AnalysedExamples;
import org.ohmloom.analysis.Analysis;
import org.ohmloom.analysis.Analyst;
import org.ohmloom.analysis.Cancel;
import org.ohmloom.draw.Paper;
import org.ohmloom.draw.Point;
import org.ohmloom.draw.Scene;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.model.Harness;
import org.ohmloom.tables.WireTables;

/** Form boards for the tests, and what they look for in them. */
final class Boards {

    static final SceneFonts FONTS = SceneFonts.load();

    private static final Map<String, List<FormBoard>> MADE = new ConcurrentHashMap<>();

    private Boards() {}

    /** The boards of an example in tiles, made once. */
    static List<FormBoard> of(String example, Paper paper) {
        return MADE.computeIfAbsent(example + " " + paper, key -> of(AnalysedExamples.of(example), paper));
    }

    static List<FormBoard> of(Analysis analysis, Paper paper) {
        return FormBoards.of(analysis, FONTS, BoardSize.PLYWOOD, Optional.of(paper));
    }

    static Analysis analysed(Harness harness) {
        return Analyst.analyse(harness, WireTables.bundled(), Cancel.NEVER);
    }

    /** The tiles of a board as the pages of a document that has nothing else. */
    static List<Scene> tiles(Harness harness, FormBoard board) {
        return new TileSheets(FONTS, harness.titleBlock())
                .sheets(board, "", 0, board.tileNames().size());
    }

    /** Pairs of lines that cross, or that touch other than at an end both have. */
    static List<String> crossings(List<String> names, List<List<Point>> lines) {
        List<String> found = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            for (int j = i + 1; j < lines.size(); j++) {
                if (cross(lines.get(i), lines.get(j))) {
                    found.add(names.get(i) + " and " + names.get(j));
                }
            }
        }
        return found;
    }

    private static boolean cross(List<Point> one, List<Point> other) {
        for (int i = 1; i < one.size(); i++) {
            for (int j = 1; j < other.size(); j++) {
                if (Capsule.cross(one.get(i - 1), one.get(i), other.get(j - 1), other.get(j))) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Least radius of the arcs of a line: where two stretches of one length turn by one small angle, mm. */
    static double leastRadiusMm(List<Point> line) {
        double least = Double.POSITIVE_INFINITY;
        for (int k = 2; k < line.size(); k++) {
            double before = line.get(k - 2).distanceMm(line.get(k - 1));
            double after = line.get(k - 1).distanceMm(line.get(k));
            double turned = Headings.between(
                    Headings.to(line.get(k - 2), line.get(k - 1)), Headings.to(line.get(k - 1), line.get(k)));
            if (turned > 0.01) {
                double chord = Math.max(before, after);
                double shorter = Math.min(before, after);
                boolean within = Math.abs(chord - shorter) < 1e-6;
                least = Math.min(least, within ? chord / 2 / Math.sin(Math.toRadians(turned / 2)) : least);
            }
        }
        return least;
    }
}
