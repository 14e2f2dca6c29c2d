package org.ohmloom.workbench.print;

import org.ohmloom.draw.Paper;
import org.ohmloom.pack.PrintedDocument;

/** Something that can be printed. */
interface Printed {

    /** What people call it. */
    String name();

    /**
     * Sets it in sheets; called off the event thread.
     *
     * @param paper      paper of drawings
     * @param monochrome whether all is in black and greys
     */
    PrintedDocument set(Paper paper, boolean monochrome);
}
