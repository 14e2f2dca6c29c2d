/**
 * Channels in the window: which sensor and output goes to which pin of which unit, planned, locked and wired.
 */
@NullMarked
package org.ohmloom.workbench.channel;

import org.jspecify.annotations.NullMarked;
