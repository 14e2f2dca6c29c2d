package org.ohmloom.solve;

/**
 * What the ripple of the inductive loads of one clock does to an island in one moment: the standard deviation of each branch
 * and point, the sign telling what rises with what. By the tangents of the moment, so exact in networks of straight branches.
 *
 * @param clock number of the clock
 * @param amps  current of each branch, A
 * @param volts voltage along each branch, V
 */
record RippleFlow(int clock, double[] amps, double[] volts) {}
