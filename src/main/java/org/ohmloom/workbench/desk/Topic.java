package org.ohmloom.workbench.desk;

/** What changed at the {@link Desk}. */
public enum Topic {
    /** Another document lies on the desk, or none, or it was saved. */
    DOCUMENT,
    /** The harness was edited, or an edit was taken back. */
    HARNESS,
    /** Results arrived, or the state of the calculation changed. */
    RESULTS,
    /** Something else is selected. */
    SELECTION,
    /** Another operating state is looked at, or other numbers are shown. */
    VIEW,
    /** A message for the status bar. */
    MESSAGE
}
