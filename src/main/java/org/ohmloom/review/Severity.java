package org.ohmloom.review;

/** How serious a finding is. */
public enum Severity {
    /** Must not be built like this. */
    ERROR,
    /** Should be looked at by a person. */
    WARNING,
    /** Worth knowing. */
    NOTE
}
