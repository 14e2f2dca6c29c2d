package org.ohmloom.pack;

import org.ohmloom.words.Text;

/** Follows the writing of a pack, and may stop it. */
public interface Progress {

    /** Follows nothing and never stops. */
    Progress NONE = new Progress() {
        @Override
        public boolean isCancelled() {
            return false;
        }

        @Override
        public void step(int done, int total, Text what) {}
    };

    /** Whether the pack is no longer wanted. */
    boolean isCancelled();

    /**
     * Told before each step, from whichever thread takes it, one at a time.
     *
     * @param done  steps done
     * @param total all steps
     * @param what  what is made now, for people
     */
    void step(int done, int total, Text what);
}
