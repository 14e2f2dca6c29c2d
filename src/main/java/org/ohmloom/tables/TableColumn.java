package org.ohmloom.tables;

/**
 * One column of a table file.
 *
 * @param name   its name in the header line
 * @param unit   the unit the head declares for it; empty for text
 * @param status what the head says of this column alone, no better than which its values are; PUBLISHED when silent
 */
public record TableColumn(String name, String unit, Status status) {}
