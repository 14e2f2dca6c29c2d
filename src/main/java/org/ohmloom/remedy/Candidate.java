package org.ohmloom.remedy;

import org.ohmloom.edit.Edit;

/**
 * A change that may help and has not been tried.
 *
 * @param kind which of the usual remedies it is
 * @param edit the change
 */
record Candidate(RemedyKind kind, Edit edit) {}
