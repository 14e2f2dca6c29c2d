package org.ohmloom.workbench.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ohmloom.bundle.length.CutLength;
import org.ohmloom.bundle.length.LengthPart;
import org.ohmloom.model.WireId;
import org.ohmloom.units.ShownUnits;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.inspect.Inspection.Reason;
import org.ohmloom.workbench.inspect.Inspection.Reasons;
import org.ohmloom.workbench.words.TradeWords;
import org.ohmloom.workbench.words.Words;

/** How long a wire is cut, part by part, for the inspector. */
final class CutFacts {
    private static final Words WORDS = Words.of("inspector");

    private CutFacts() {}

    static Optional<Reasons> of(Readout readout, WireId wire) {
        return readout.analysis()
                .flatMap(analysis -> analysis.evidence().lengths().of(wire))
                .map(length -> reasons(length, readout.units()));
    }

    private static Reasons reasons(CutLength length, ShownUnits units) {
        List<Reason> parts = new ArrayList<>();
        for (LengthPart part : length.parts()) {
            parts.add(new Reason(
                    TradeWords.capital(Words.said(part.text())) + ": " + units.millimetres(part.millimetres()),
                    "",
                    Words.said(part.told()),
                    false));
        }
        parts.add(new Reason(
                WORDS.get("cut.may-be-longer-by", units.metres(length.toleranceMetres())),
                "",
                length.tolerance().citation().text(),
                false));
        return new Reasons(WORDS.get("cut.cut-to", units.metres(length.metres())), parts);
    }
}
