package org.ohmloom.draw;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Numbers and words of a scene as text, to a hundredth of a millimetre, the same on every computer. */
final class Dump {

    private Dump() {}

    static String mm(double lengthMm) {
        long hundredths = Math.round(Math.abs(lengthMm) * 100);
        if (!Double.isFinite(lengthMm) || hundredths == 0) {
            return Double.isFinite(lengthMm) ? "0" : String.valueOf(lengthMm);
        }
        StringBuilder text = new StringBuilder(lengthMm < 0 ? "-" : "").append(hundredths / 100);
        long rest = hundredths % 100;
        if (rest > 0) {
            text.append('.').append(rest / 10);
            if (rest % 10 > 0) {
                text.append(rest % 10);
            }
        }
        return text.toString();
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
