/**
 * Does the score measure what it should? Trainees with named habits take drills, and for every pair of habits that should differ
 * in a part the area under the ROC curve is worked out (standards/rankArea.ts), scene by scene, since scenes differ in what there
 * is to be found: won pairs over all pairs of the same scene. A habit is asked only in scenes where it can show (where.ts): by
 * what lies there, never by how anybody did. Service is held against the fewest minutes of a careful trainee
 * who exposed nobody, unless a proven par is handed in.
 */
import type { Log, Replay } from '../acts/types.ts';
import { engineVersion } from '../acts/version.ts';
import { score } from '../score/score.ts';
import type { Score, Part as ScorePart } from '../score/types.ts';
import { usualWeights, type Weights } from '../score/weights.ts';
import { rankArea, rankAreaError } from '../standards/rankArea.ts';
import { wilsonInterval } from '../standards/wilson.ts';
import type { World } from '../world/types.ts';
import { habitOf, habits } from './habits.ts';
import { takeDrill } from './takeDrill.ts';
import type { Habit, HabitId, Where } from './types.ts';
import { whereIn } from './where.ts';

export const partNames = ['recognition', 'order', 'control', 'exposure', 'service'] as const;

export interface TrialOptions {
  /** Trainees in all, shared evenly among the habits and the scenes. */
  readonly trainees: number;
  readonly seed: number;
  readonly weights?: Weights;
  /** Proven par of a scene, where there is one. */
  readonly par?: (world: World) => Log['par'];
}

/** Mean of a part with its 95 % interval by the normal approximation; null where nothing was to be judged. */
export interface Estimate {
  readonly judged: number;
  readonly mean: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

export interface HabitReport {
  readonly habit: HabitId;
  readonly words: string;
  readonly trainees: number;
  readonly parts: Readonly<Record<ScorePart['name'], Estimate>>;
  readonly passed: { readonly count: number; readonly low: number; readonly high: number };
}

export interface PairReport {
  readonly habit: HabitId;
  readonly against: HabitId;
  readonly part: ScorePart['name'];
  /** Should the part differ, stay as it is, or at least not lie above the careful one's. */
  readonly expected: 'differs' | 'same' | 'no-gain';
  readonly where: Where;
  readonly scenes: readonly string[];
  /** Pairs of trainees of one scene in which both had something to judge. */
  readonly compared: number;
  /** Share of pairs in which the habit scores above `against`, ties half; null where no scene can tell. */
  readonly auc: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

export interface Trial {
  readonly trainees: number;
  readonly seed: number;
  readonly weights: string;
  readonly scenes: readonly {
    readonly scene: string;
    readonly parMinutes: number | null;
    readonly par: 'proven' | 'careful' | 'none';
  }[];
  readonly habits: readonly HabitReport[];
  readonly pairs: readonly PairReport[];
}

interface Taken {
  readonly habit: HabitId;
  readonly scene: number;
  readonly replay: Replay;
}

interface Scored {
  readonly habit: HabitId;
  readonly scene: number;
  readonly score: Score;
}

const z95 = 1.959963984540054;

const estimateOf = (values: readonly number[]): Estimate => {
  const judged = values.length;
  if (judged === 0) return { judged, mean: null, low: null, high: null };
  const mean = values.reduce((sum, value) => sum + value, 0) / judged;
  const spread = values.reduce((sum, value) => sum + (value - mean) * (value - mean), 0);
  const reach = judged < 2 ? 1 : z95 * Math.sqrt(spread / (judged - 1) / judged);
  return { judged, mean, low: Math.max(0, mean - reach), high: Math.min(1, mean + reach) };
};

const partValue = (scored: Score, part: ScorePart['name']): number | null =>
  scored.parts.find(({ name }) => name === part)?.value ?? null;

const valuesOf = (all: readonly Scored[], habit: HabitId, part: ScorePart['name'], scene: number): readonly number[] =>
  all
    .filter((each) => each.habit === habit && each.scene === scene)
    .flatMap((each) => partValue(each.score, part) ?? []);

/** Won pairs over all pairs within the same scene, with an interval by Hanley and McNeil's error. */
const areaOver = (
  all: readonly Scored[],
  [habit, against]: readonly [HabitId, HabitId],
  part: ScorePart['name'],
  scenes: readonly number[],
): Pick<PairReport, 'compared' | 'auc' | 'low' | 'high'> => {
  let [won, pairs, n, m] = [0, 0, 0, 0];
  for (const scene of scenes) {
    const high = valuesOf(all, habit, part, scene);
    const low = valuesOf(all, against, part, scene);
    const area = rankArea(high, low);
    if (area === null) continue;
    won += area * high.length * low.length;
    pairs += high.length * low.length;
    n += high.length;
    m += low.length;
  }
  if (pairs === 0) return { compared: 0, auc: null, low: null, high: null };
  const auc = won / pairs;
  const reach = z95 * rankAreaError(auc, n, m);
  return { compared: pairs, auc, low: Math.max(0, auc - reach), high: Math.min(1, auc + reach) };
};

const habitReport = (all: readonly Scored[], habit: HabitId): HabitReport => {
  const mine = all.filter((each) => each.habit === habit);
  const parts = partNames.map((name) => [name, estimateOf(mine.flatMap((each) => partValue(each.score, name) ?? []))]);
  const count = mine.filter((each) => each.score.verdict === 'pass').length;
  const { lower, upper } = wilsonInterval(count, mine.length);
  return {
    habit,
    words: habitOf(habit).words,
    trainees: mine.length,
    parts: Object.fromEntries(parts) as HabitReport['parts'],
    passed: { count, low: lower, high: upper },
  };
};

/** Fewest minutes of a careful trainee who exposed nobody; null if there is none. */
const carefulPar = (world: World, taken: readonly Taken[], scene: number): Log['par'] => {
  const minutes = taken
    .filter((each) => each.scene === scene)
    .filter(({ replay }) => replay.steps.every(({ exposures }) => exposures.length === 0))
    .map(({ replay }) => replay.end.clock.minute - replay.start.clock.minute);
  if (minutes.length === 0) return null;
  const least = Math.min(...minutes);
  const { scenarioHash } = world;
  return { minutes: least, customerMinutes: 0, scenarioHash, engine: engineVersion };
};

/** All drills taken and scored. `told` hears of each drill done, for whoever waits. */
export const trial = (
  worlds: readonly World[],
  { trainees, seed, weights = usualWeights, par }: TrialOptions,
  told: (done: number, of: number) => void = () => undefined,
): Trial => {
  const each = Math.max(1, Math.floor(trainees / habits.length));
  const of = each * habits.length;
  // The same luck for every habit: what differs is the habit.
  const take = (habit: Habit, n: number): Taken => {
    const scene = n % worlds.length;
    const start = worlds[scene];
    if (start === undefined) throw new Error('a trial without a scene');
    return { habit: habit.id, scene, replay: takeDrill(start, habit, `${seed}/${n}`) };
  };
  const numbers = Array.from({ length: each }, (_, n) => n);
  const careful = numbers.map((n) => take(habitOf('careful'), n));
  const pars = worlds.map((world, scene) => par?.(world) ?? carefulPar(world, careful, scene));
  const scored: Scored[] = [];
  const judge = ({ habit, scene, replay }: Taken): void => {
    const log = { ...replay.log, par: pars[scene] ?? null };
    scored.push({ habit, scene, score: score({ ...replay, log }, weights) });
    told(scored.length, of);
  };
  for (const each of careful) judge(each);
  for (const habit of habits.filter(({ id }) => id !== 'careful')) for (const n of numbers) judge(take(habit, n));
  const scenesWhere = (where: Where): readonly number[] =>
    worlds.flatMap((world, scene) => (whereIn(world).includes(where) ? [scene] : []));
  const pair = (
    against: HabitId,
    part: ScorePart['name'],
    where: Where,
    expected: PairReport['expected'],
  ): PairReport => {
    const scenes = scenesWhere(where);
    return {
      habit: 'careful',
      against,
      part,
      expected,
      where,
      scenes: scenes.map((scene) => worlds[scene]?.scenario ?? ''),
      ...areaOver(scored, ['careful', against], part, scenes),
    };
  };
  return {
    trainees: scored.length,
    seed,
    weights: weights.name,
    scenes: worlds.map((world, scene) => ({
      scene: world.scenario,
      parMinutes: pars[scene]?.minutes ?? null,
      par: par?.(world) != null ? 'proven' : pars[scene] == null ? 'none' : 'careful',
    })),
    habits: habits.map(({ id }) => habitReport(scored, id)),
    pairs: habits.flatMap(({ id, spoils, keeps, gainsNothingIn }) => [
      ...spoils.map(({ part, where }) => pair(id, part, where, 'differs')),
      ...keeps.map((part) => pair(id, part, 'anywhere', 'same')),
      ...gainsNothingIn.map((part) => pair(id, part, 'anywhere', 'no-gain')),
    ]),
  };
};

/** Area from which a spoilt part counts as told apart, and how far from one half a kept one may lie. */
export const toldApart = 0.95;
export const sameWithin = 0.1;

/** Whether a pair came out as it should; true where no scene could tell. */
export const isAsExpected = ({ expected, auc }: PairReport): boolean => {
  if (auc === null) return true;
  if (expected === 'differs') return auc >= toldApart;
  return auc >= 0.5 - sameWithin && (expected === 'no-gain' || auc <= 0.5 + sameWithin);
};
