/**
 * Weights and thresholds of judging, in one place: the usual value, how far an instructor's file may move it, and why it is
 * what it is. They are our own choices: no published measure for line crews was found. No weight touches this: an exposure
 * that could have been fatal fails. A verdict never depends on par.
 */

/** One number of judging. */
export interface WeightRow {
  readonly usual: number;
  readonly least: number;
  readonly most: number;
  readonly why: string;
}

export const weightTable = {
  'miss-fatal': {
    usual: 3,
    least: 2,
    most: 6,
    why: 'A missed cause that can kill weighs most; serious ones are the scale.',
  },
  'miss-serious': { usual: 2, least: 1, most: 4, why: 'A lasting injury is no small thing, and not a death.' },
  'miss-minor': {
    usual: 1,
    least: 0.25,
    most: 2,
    why: 'Small harm is found less often (Albert and others 2020), so it still counts.',
  },
  'miss-damage': { usual: 0.5, least: 0, most: 1, why: 'Only things are harmed by it, nobody is hurt.' },
  'level-elimination': { usual: 1, least: 1, most: 1, why: 'What is gone cannot fail: the top of the scale.' },
  'level-substitution': { usual: 0.95, least: 0.8, most: 1, why: 'A lesser hazard in its place.' },
  'level-engineering': { usual: 0.9, least: 0.7, most: 1, why: 'A thing stands between, whatever people do.' },
  'level-administrative': { usual: 0.7, least: 0.4, most: 0.9, why: 'It holds as long as somebody watches.' },
  'level-ppe': { usual: 0.6, least: 0.3, most: 0.8, why: 'The last barrier: when it fails, nothing is behind it.' },
  improvised: {
    usual: 0.9,
    least: 0.5,
    most: 1,
    why: 'A control that nobody planned works as well, but was luck of the moment.',
  },
  'exposure-cost': {
    usual: 0.2,
    least: 0.1,
    most: 1,
    why: 'Five exposures, none of them fatal, leave nothing of the part.',
  },
  'coverage-share': {
    usual: 0.5,
    least: 0.3,
    most: 0.7,
    why: 'Half of order is what had been perceived before hands-on (coverage goes with finding: Rubin and others 2015), half what came too early.',
  },
  'too-early': {
    usual: 1,
    least: 0.5,
    most: 3,
    why: 'One act that met a fatal hazard before its cause was known halves that part of order.',
  },
  'remark-false-calls': {
    usual: 3,
    least: 1,
    most: 20,
    why: 'Calls of what is not there cost a crew time and its ear; from so many on the verdict says so.',
  },
} as const satisfies Readonly<Record<string, WeightRow>>;

export type WeightId = keyof typeof weightTable;
export const weightIds = Object.keys(weightTable) as readonly WeightId[];

/** The weights that a score was made with. */
export interface Weights {
  /** 'usual', or the name that an instructor's file gives itself. */
  readonly name: string;
  readonly values: Readonly<Record<WeightId, number>>;
}

const usualValues = Object.fromEntries(weightIds.map((id) => [id, weightTable[id].usual])) as Record<WeightId, number>;

/** Every weight at its usual value. */
export const usualWeights: Weights = { name: 'usual', values: usualValues };

/** Rows whose order has a meaning, from the greatest down. */
export const descending: readonly (readonly WeightId[])[] = [
  ['miss-fatal', 'miss-serious', 'miss-minor', 'miss-damage'],
  ['level-elimination', 'level-substitution', 'level-engineering', 'level-administrative', 'level-ppe'],
];

/** Those that differ from the usual ones. */
export const changedFrom = ({ values }: Weights): Readonly<Partial<Record<WeightId, number>>> =>
  Object.fromEntries(weightIds.filter((id) => values[id] !== weightTable[id].usual).map((id) => [id, values[id]]));
