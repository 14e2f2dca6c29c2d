package org.ohmloom.tables;

/** How much weight a design basis gives to a placement rule. */
public enum PlacementSeverity {
    /** The body of practice demands it. */
    ERROR,
    /** A person should look at it. */
    WARNING,
    /** Good to know; the body of practice does not ask for it. */
    NOTE
}
