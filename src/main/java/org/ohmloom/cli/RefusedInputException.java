package org.ohmloom.cli;

/** Thrown when what a person asked for cannot be done; its message is the one line they see. */
final class RefusedInputException extends Exception {

    private static final long serialVersionUID = 1L;

    RefusedInputException(String message) {
        super(message);
    }
}
