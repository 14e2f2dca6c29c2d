package org.ohmloom.draw;

import java.util.Optional;
import org.ohmloom.model.BreakoutId;

/**
 * What is written along a tie.
 *
 * @param length length in mm, as "850 mm"; empty for an in-line pair
 * @param soft   id of the segment and of its zone
 * @param number the number asked for
 * @param near   name of the breakout it is drawn from, where no other run names it
 * @param far    name of the breakout it leads to
 * @param running running dimension from the datum before it, as "1500 from D1"; empty without one
 * @param runningAt the breakout that the running dimension is of
 * @param flag    numbers of the notes on it, empty without notes or where they are not shown
 * @param widthMm room that all of it needs beside the splices, mm
 */
record RunText(
        String length,
        String soft,
        Optional<String> number,
        String near,
        String far,
        String running,
        Optional<BreakoutId> runningAt,
        String flag,
        double widthMm) {

    /** Room below the line for a running dimension, mm. */
    double belowMm() {
        return running.isEmpty() ? 0 : RunTexts.LINE_MM;
    }
}
