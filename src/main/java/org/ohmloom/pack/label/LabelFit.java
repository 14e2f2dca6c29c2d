package org.ohmloom.pack.label;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.draw.Weight;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.LabelSize;
import org.ohmloom.units.Formats;

/**
 * A text in a size of label.
 *
 * @param size        the label
 * @param letteringMm height of the capitals, mm
 * @param lengthMm    how long it is along the wire, mm: for a sleeve what is cut off the reel
 * @param words       why it suits
 */
public record LabelFit(LabelSize size, double letteringMm, double lengthMm, String words) {

    /** Heights of lettering of ISO 3098, largest first, mm. */
    private static final List<Double> SERIES_MM = List.of(7.0, 5.0, 3.5, 2.5, 1.8);

    /** Distance of base lines over the height of capitals. */
    static final double PITCH = 1.6;

    /**
     * The smallest label of a sort that goes over what the text is for, holds on it, and takes the text in lettering that can be
     * read; of sleeves the smallest that has done three quarters of its shrinking there, when there is one. Empty when none does.
     */
    static Optional<LabelFit> of(LabelText text, LabelSize.Kind kind, FabricationTables tables, SceneFonts fonts) {
        List<LabelFit> fits = tables.labels().stream()
                .filter(size -> size.kind() == kind && goesRound(size, text))
                .sorted(Comparator.comparingDouble(LabelSize::mostMm))
                .flatMap(size -> fit(text, size, tables, fonts).stream())
                .toList();
        return fits.stream()
                .filter(fit -> kind != LabelSize.Kind.SLEEVE || isTight(fit.size(), diameter(text), tables))
                .findFirst()
                .or(() -> fits.stream().findFirst());
    }

    private static double diameter(LabelText text) {
        return text.diameterMm().orElse(0);
    }

    private static boolean goesRound(LabelSize size, LabelText text) {
        return text.diameterMm().isPresent()
                ? diameter(text) > size.leastMm() && diameter(text) < size.mostMm()
                : size.kind() == LabelSize.Kind.FLAG;
    }

    /** Whether a sleeve has done its share of shrinking on that diameter, mm. */
    static boolean isTight(LabelSize sleeve, double diameterMm, FabricationTables tables) {
        double share = tables.value("shrink-share").value();
        return diameterMm <= sleeve.mostMm() - share * (sleeve.mostMm() - sleeve.leastMm()) + 1e-9;
    }

    /** Height of the printed part, mm: of a sleeve half of what goes round it, lying flat. */
    static double printedMm(LabelSize size, FabricationTables tables) {
        return size.kind() == LabelSize.Kind.SLEEVE
                ? size.mostMm() * tables.value("sleeve-flat").value()
                : size.heightMm().orElseThrow();
    }

    private static Optional<LabelFit> fit(LabelText text, LabelSize size, FabricationTables tables, SceneFonts fonts) {
        boolean sleeve = size.kind() == LabelSize.Kind.SLEEVE;
        List<String> lines = sleeve ? List.of(text.text()) : text.lines();
        double margin = tables.value("label-margin").value();
        double beside = sleeve ? tables.value("sleeve-margin").value() : margin;
        double high = printedMm(size, tables) - 2 * margin;
        for (double lettering : SERIES_MM) {
            double wide = lines.stream()
                    .mapToDouble(line -> fonts.widthMm(line, Weight.REGULAR, lettering))
                    .max()
                    .orElse(0);
            boolean allowed = lettering >= tables.value("lettering-least").value()
                    && lettering <= tables.value("lettering-most").value();
            boolean fits = wide + 2 * beside <= size.widthMm() && lettering * (1 + PITCH * (lines.size() - 1)) <= high;
            if (allowed && fits) {
                double step = tables.value("sleeve-step").value();
                double length = sleeve ? Math.ceil((wide + 2 * beside) / step - 1e-9) * step : size.widthMm();
                return Optional.of(new LabelFit(size, lettering, length, words(text, size, tables)));
            }
        }
        return Optional.empty();
    }

    private static String words(LabelText text, LabelSize size, FabricationTables tables) {
        String on = text.diameterMm().isPresent() ? Formats.millimetres(diameter(text)) : "a diameter not known";
        String range = Formats.millimetres(size.leastMm()) + " to " + Formats.millimetres(size.mostMm());
        return switch (size.kind()) {
            case SLEEVE -> range + " over " + on
                    + (isTight(size, diameter(text), tables) ? ", tight" : ", holds, short of three quarters shrunk");
            case WRAP -> "for " + range + " round, here " + on;
            case FLAG -> "for up to " + Formats.millimetres(size.mostMm()) + " round, here " + on;
        };
    }
}
