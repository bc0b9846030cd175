/** Nets of a line with several phases: the net's name, a hyphen and the phase's letter; one phase without a letter is the net itself. */

/** Which phases a line carries, in the order of their letters on the pole, road side first. */
export const phaseWords = ['a', 'b', 'c', 'ab', 'bc', 'ac', 'abc'] as const;
export type Phases = (typeof phaseWords)[number];
export type Phase = 'a' | 'b' | 'c';

/** Letters of the phases; a line of which nothing is said has one without a letter. */
export const lettersOf = (phases: Phases | undefined): readonly (Phase | null)[] =>
  phases === undefined ? [null] : [...phases].map((letter) => (letter === 'b' || letter === 'c' ? letter : 'a'));

/** 'p1.main' of phase a is 'p1.main-a'. */
export const phaseNet = (net: string, letter: Phase | null): string => (letter === null ? net : `${net}-${letter}`);

/** All nets of the line. */
export const phaseNets = (net: string, phases: Phases | undefined): readonly string[] =>
  lettersOf(phases).map((letter) => phaseNet(net, letter));
