package org.ohmloom.store;

import org.ohmloom.model.Harness;

/**
 * A harness as it was read from a file.
 *
 * @param harness the harness
 * @param stamp   what the file was, to hand in when it is written again
 */
public record StoredHarness(Harness harness, FileStamp stamp) {}
