package org.ohmloom.workbench.study;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.ohmloom.ground.ReturnStudy;
import org.ohmloom.model.ElementId;
import org.ohmloom.units.Unit;
import org.ohmloom.workbench.desk.Readout;
import org.ohmloom.workbench.sheet.CellText;
import org.ohmloom.workbench.widget.Tone;

/** What the lists of the return paths have in common. */
final class ReturnRows {

    private ReturnRows() {}

    /** What was found, or nothing. */
    static ReturnStudy study(Readout readout) {
        return readout.analysis().map(each -> each.evidence().returns()).orElse(ReturnStudy.NONE);
    }

    /** A voltage in the unit of a column of millivolts. */
    static CellText millivolts(double volts) {
        return CellText.of(Unit.MILLIVOLT.fromCanonical(volts));
    }

    /** A voltage in the unit of a column of millivolts, or nothing. */
    static CellText millivolts(OptionalDouble volts) {
        return volts.isPresent() ? millivolts(volts.getAsDouble()) : CellText.EMPTY;
    }

    /** A cell that stands out because its value is beyond a limit. */
    static CellText over(CellText cell, String tip) {
        return cell.in(Tone.ERROR).saying(tip);
    }

    /** Ids in a row: "M1, M2". */
    static String ids(List<? extends ElementId> ids) {
        return ids.stream().map(ElementId::value).collect(Collectors.joining(", "));
    }
}
