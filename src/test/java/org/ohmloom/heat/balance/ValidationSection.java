package org.ohmloom.heat.balance;

import java.util.List;
import java.util.Locale;

/**
 * Points of one source.
 *
 * @param title     what is checked
 * @param source    where the points come from
 * @param tolerance how far off a point may be, and who said so
 * @param remark    what the errors tell
 * @param points    the points
 */
record ValidationSection(String title, String source, String tolerance, String remark, List<ValidationPoint> points) {

    String text() {
        StringBuilder text = new StringBuilder();
        text.append("## ").append(title).append("\n\n");
        text.append("Source: ").append(source).append("\n\n");
        text.append("Tolerance: ").append(tolerance).append("\n\n");
        text.append(remark).append("\n\n");
        text.append("| point | published | ours | error | allowed |\n|---|---|---|---|---|\n");
        points.forEach(point -> text.append(point.line()).append('\n'));
        text.append(String.format(
                        Locale.ROOT,
                        "%n%d points: mean %+.1f %%, root mean square %.1f %%, from %+.1f to %+.1f %%.%n",
                        points.size(),
                        mean(),
                        rootMeanSquare(),
                        points.stream()
                                .mapToDouble(ValidationPoint::errorPercent)
                                .min()
                                .orElseThrow(),
                        points.stream()
                                .mapToDouble(ValidationPoint::errorPercent)
                                .max()
                                .orElseThrow())
                .replace("\r", ""));
        return text.toString();
    }

    double mean() {
        return points.stream()
                .mapToDouble(ValidationPoint::errorPercent)
                .average()
                .orElseThrow();
    }

    double rootMeanSquare() {
        return Math.sqrt(points.stream()
                .mapToDouble(point -> point.errorPercent() * point.errorPercent())
                .average()
                .orElseThrow());
    }
}
