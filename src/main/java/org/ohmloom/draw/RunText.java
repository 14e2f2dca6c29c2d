package org.ohmloom.draw;

import java.util.Optional;
import org.ohmloom.model.BreakoutId;

/**
 * What is written along a tie.
 *
 * @param length length in mm, as "850 mm"; empty for an in-line pair
 * @param soft   id of the segment and of its zone
 * @param more   what stands on a line of its own between the length and the run; empty where there is no such line
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
        String more,
        Optional<String> number,
        String near,
        String far,
        String running,
        Optional<BreakoutId> runningAt,
        String flag,
        double widthMm) {

    /** Room above the line for a line of its own, mm. */
    double aboveMm() {
        return more.isEmpty() ? 0 : RunTexts.LINE_MM;
    }

    /** Room below the line for a running dimension, mm. */
    double belowMm() {
        return running.isEmpty() ? 0 : RunTexts.LINE_MM;
    }
}
