package org.ohmloom.remedy;

/**
 * How much a search for remedies may do against one finding. What it leaves out is told.
 *
 * @param foreseen most changes and combinations whose effect is foreseen by superposition
 * @param serving  most of those that are foreseen to serve and are then tried
 * @param trials   most changes tried on a copy
 * @param mended   most further ones tried, that join a change with what takes away the findings it brings
 * @param whole    most of the best ones held against all rules
 */
public record Effort(int foreseen, int serving, int trials, int mended, int whole) {

    /** What a person waits for. */
    public static final Effort USUAL = new Effort(240, 8, 14, 6, 3);
}
