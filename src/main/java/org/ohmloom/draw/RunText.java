package org.ohmloom.draw;

import java.util.Optional;

/**
 * What is written along a tie.
 *
 * @param length length in mm, as "850 mm"; empty for an in-line pair
 * @param soft   id of the segment and of its zone
 * @param number the number asked for
 * @param near   name of the breakout it is drawn from, where no other run names it
 * @param far    name of the breakout it leads to
 * @param widthMm room that all of it needs beside the splices, mm
 */
record RunText(String length, String soft, Optional<String> number, String near, String far, double widthMm) {}
