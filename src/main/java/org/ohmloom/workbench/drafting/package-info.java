/**
 * Drawing on the layout: the tools, their toolbar, what they show while they are used, and the commands that go with them.
 */
@NullMarked
package org.ohmloom.workbench.drafting;

import org.jspecify.annotations.NullMarked;
