package org.ohmloom.analysis.revision;

/**
 * One field of an element with other contents.
 *
 * @param field  words of the field: "size", "cavity 3, contact"
 * @param before what it was, with its unit; empty for nothing
 * @param after  what it is now, with its unit; empty for nothing
 */
public record FieldChange(String field, String before, String after) {}
