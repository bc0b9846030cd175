/**
 * Variants of a base scenario: drawn (vary.ts, layFaults.ts), written, read again as any file, and thrown away if the
 * scene is no good one: it does not parse, its circuit has no solution, a fault does no harm there, a claim of its short
 * proof fails or it has no par, its difficulty is not the one asked for, or it is there already. Each draw is seeded by
 * the seed and its number, so the same seed gives the same files.
 */
import { CircuitDefect } from '../circuit/circuitDefect.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { prove } from '../proof/prove.ts';
import { parse } from '../scenario/parse.ts';
import { build } from '../world/build.ts';
import type { World } from '../world/types.ts';
import { difficultyOf } from './difficulty.ts';
import { Draw } from './draw.ts';
import { rowsFor } from './layFaults.ts';
import { type Bounds, type Difficulty, plainBounds, type Rejection, type Variant } from './types.ts';
import { vary } from './vary.ts';
import { type Group, readWritten, writeYaml } from './written.ts';

export interface GenerateOptions {
  readonly seed: number;
  readonly count: number;
  readonly grade?: Difficulty['grade'];
  readonly bounds?: Bounds;
  /** Draws before it gives up; 40 a variant if not said. */
  readonly most?: number;
  readonly tell?: (draws: number, made: number) => void;
}

export interface Generated {
  readonly variants: readonly Variant[];
  readonly draws: number;
  readonly rejected: Readonly<Record<Rejection, number>>;
}

/** Bounds of the short proof: acts looked at and routes walked. */
const SHORT = { most: 1500, tries: 10 };

const head =
  'A variant, drawn and proved by loose-tie generate.\nAn invention: no real place, road, person or company. Training aid only.';

const read = (written: Group, name: string) =>
  parse(writeYaml(written, head), name, { parts: (scenario) => build(scenario, '').parts });

/** The base varied and with faults; null if the varied scene is none. */
function drawn(draw: Draw, base: Group, bounds: Bounds, id: string): Group | null {
  const bare = { ...vary(draw, base, bounds), id, faults: [], 'look-alikes': [] };
  const parsed = read(bare, id);
  if (!parsed.ok) return null;
  const { parts } = build(parsed.scenario, '');
  const faults = rowsFor(draw, parts, draw.whole(...bounds.faults), false, new Set());
  const taken = new Set(faults.map(({ on }) => String(on)));
  return { ...bare, faults, 'look-alikes': rowsFor(draw, parts, draw.whole(...bounds.lookAlikes), true, taken) };
}

/** Whether the circuit has a solution. */
function isSolvable(world: World): boolean {
  try {
    solveCircuit(world);
    return true;
  } catch (error) {
    if (error instanceof CircuitDefect) return false;
    throw error;
  }
}

type Outcome = { readonly variant: Variant } | { readonly rejection: Rejection };

function variantFrom(written: Group, id: string, grade: Difficulty['grade'] | undefined): Outcome {
  const parsed = read(written, id);
  if (!parsed.ok) return { rejection: 'parse' };
  const world = build(parsed.scenario, parsed.hash, 1);
  if (!isSolvable(world)) return { rejection: 'circuit' };
  const hazards = hazardsIn(world);
  const causes = parsed.scenario.faults.map((fault) => fault.id);
  if (!causes.every((cause) => hazards.some((hazard) => hazard.causes.includes(cause))))
    return { rejection: 'harmless' };
  const proof = prove(world, { seed: 1, ...SHORT });
  if (!proof.ok || proof.par === null) return { rejection: 'proof' };
  const difficulty = difficultyOf(world, causes, parsed.scenario.lookAlikes.length, hazards, proof);
  if (grade !== undefined && difficulty.grade !== grade) return { rejection: 'grade' };
  // The grade stands in the file, and neither the World's physics nor its proof reads it.
  const yaml = writeYaml({ ...written, grade: difficulty.grade }, head);
  const graded = parse(yaml, id, { parts: (scenario) => build(scenario, '').parts });
  if (!graded.ok) return { rejection: 'parse' };
  return { variant: { id, yaml, scenario: graded.scenario, difficulty, proof } };
}

/** What two variants have in common if they are twins. */
const faceOf = ({ scenario }: Variant): string => JSON.stringify({ ...scenario, id: '', title: '' });

/** Variants of a base scenario's text, which must be a good one; fewer than asked for if the draws run out. */
export function generate(base: string, options: GenerateOptions): Generated {
  const { seed, count, grade, bounds = plainBounds, most = 40 * count, tell } = options;
  const written = readWritten(base);
  const rejected: Record<Rejection, number> = { parse: 0, circuit: 0, harmless: 0, proof: 0, grade: 0, twin: 0 };
  const variants: Variant[] = [];
  const faces = new Set<string>();
  let draws = 0;
  while (variants.length < count && draws < most) {
    tell?.(draws, variants.length);
    draws++;
    const draw = new Draw(`variant ${seed} ${draws}`);
    const id = `${String(written.id)}-${seed}-${variants.length + 1}`;
    const made = drawn(
      draw,
      { ...written, title: `${String(written.title)}, variant ${seed}-${variants.length + 1}` },
      bounds,
      id,
    );
    const outcome: Outcome = made === null ? { rejection: 'parse' } : variantFrom(made, id, grade);
    if ('rejection' in outcome) rejected[outcome.rejection]++;
    else if (faces.has(faceOf(outcome.variant))) rejected.twin++;
    else {
      faces.add(faceOf(outcome.variant));
      variants.push(outcome.variant);
    }
  }
  return { variants, draws, rejected };
}
