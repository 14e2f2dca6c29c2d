package org.ohmloom.draw;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers and words of a scene as text, to a hundredth of a millimetre, the same on every computer. */
final class Dump {

    private Dump() {}

    static String mm(double lengthMm) {
        String text = String.format(Locale.ROOT, "%.2f", lengthMm).replaceFirst("\\.?0+$", "");
        return text.equals("-0") ? "0" : text;
    }

    static String point(Point point) {
        return mm(point.xMm()) + "," + mm(point.yMm());
    }

    static String points(List<Point> points) {
        return points.stream().map(Dump::point).collect(Collectors.joining(" "));
    }

    static String extent(Extent extent) {
        return mm(extent.leftMm()) + "," + mm(extent.topMm()) + " " + mm(extent.widthMm()) + "x"
                + mm(extent.heightMm());
    }

    static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
