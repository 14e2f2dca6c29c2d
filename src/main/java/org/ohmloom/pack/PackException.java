package org.ohmloom.pack;

/** Says in one line why a build pack was not written, and what would be right. */
public final class PackException extends Exception {

    private static final long serialVersionUID = 1L;

    /** One line for people. */
    public PackException(String message) {
        super(message);
    }

    /** One line for people, and what led to it. */
    public PackException(String message, Throwable cause) {
        super(message, cause);
    }
}
