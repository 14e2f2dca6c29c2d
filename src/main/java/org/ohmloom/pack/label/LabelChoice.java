package org.ohmloom.pack.label;

import java.util.List;
import java.util.Optional;
import org.ohmloom.draw.SceneFonts;
import org.ohmloom.tables.FabricationTables;
import org.ohmloom.tables.LabelSize;

/**
 * A text with the label that is made for it. A wire gets a sleeve, slid on before its ends are crimped; anything else a label that
 * goes round it as it lies: wrapped where one fits, otherwise a flag.
 *
 * @param text    what it says
 * @param chosen  the label; empty when no size takes the text
 * @param instead what may serve instead: for a wire already crimped a label that goes round it, otherwise a flag
 */
public record LabelChoice(LabelText text, Optional<LabelFit> chosen, Optional<LabelFit> instead) {

    /** The choice for a text. */
    public static LabelChoice of(LabelText text, FabricationTables tables, SceneFonts fonts) {
        List<LabelSize.Kind> order = text.kind() == LabelText.Kind.WIRE
                ? List.of(LabelSize.Kind.SLEEVE, LabelSize.Kind.WRAP, LabelSize.Kind.FLAG)
                : List.of(LabelSize.Kind.WRAP, LabelSize.Kind.FLAG);
        List<LabelFit> fits = order.stream()
                .flatMap(kind -> LabelFit.of(text, kind, tables, fonts).stream())
                .toList();
        return new LabelChoice(
                text, fits.stream().findFirst(), fits.stream().skip(1).findFirst());
    }
}
