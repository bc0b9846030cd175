/** The engine's version, written into every log; a replay by another version says so instead of guessing. */

/** Raise the last number with any change that alters a World, a hash or a score for the same acts. */
export const engineVersion = '0.4.0';
