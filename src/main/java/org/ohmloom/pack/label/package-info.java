/** Labels of the pack: what each says, which size holds it and goes round what it is on, and sheets true to size. */
@NullMarked
package org.ohmloom.pack.label;

import org.jspecify.annotations.NullMarked;
