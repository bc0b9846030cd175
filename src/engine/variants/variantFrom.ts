/**
 * One draw: the base varied (vary.ts), told anew (retell.ts), with faults laid (layFaults.ts), checked like any scenario,
 * and thrown away if the scene is no good one: it does not parse, it is odd (odd.ts), its circuit has no solution,
 * its faults do no harm there, a claim of its short proof fails or it has no par, its end or its difficulty is not the one
 * asked for, what costs least first. A fault that is behind no hazard is left out where enough others are. What is kept is
 * written, read again like any file, and must then be the scene that was proved.
 */
import { CircuitDefect } from '../circuit/circuitDefect.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { prove } from '../proof/prove.ts';
import { type Parsed, parse, parseWritten } from '../scenario/parse.ts';
import { scenarioHash } from '../scenario/scenarioHash.ts';
import type { Scenario, ScenarioVariant } from '../scenario/types.ts';
import { build } from '../world/build.ts';
import type { World } from '../world/types.ts';
import { difficultyOf, pointsBefore, reachable } from './difficulty.ts';
import { Draw } from './draw.ts';
import { layFaults } from './layFaults.ts';
import { oddIn, oddScene } from './odd.ts';
import { retell } from './retell.ts';
import type { Base, Bounds, Grade, Rejected, Variant } from './types.ts';
import { vary } from './vary.ts';
import { type Group, readWritten, rowsAt, writeYaml } from './written.ts';

/** Bounds of the short proof: acts looked at and routes walked. */
const SHORT = { most: 1500, tries: 10, inShort: true };

const head = ({ id }: Base, seed: number, number: number): string =>
  `Drawn and proved by loose-tie generate from ${id}, seed ${seed}, number ${number}.\nAn invention: no real place, road, person or company. Training aid only.`;

const options = { parts: (scenario: Scenario) => build(scenario, '').parts };

type Read = Extract<Parsed, { readonly ok: true }>;
type Stepped<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly rejected: Rejected };

const no = (is: Rejected['is'], why: string): { readonly ok: false; readonly rejected: Rejected } => ({
  ok: false,
  rejected: { is, why },
});

function readGroup(written: Group, name: string): Stepped<Read> {
  const parsed = parseWritten(written, name, options);
  return parsed.ok ? { ok: true, value: parsed } : no('parse', parsed.problems[0]?.message ?? 'no scenario');
}

/** Why the circuit has no solution; null where it has one. */
function unsolved(world: World): string | null {
  try {
    solveCircuit(world);
    return null;
  } catch (error) {
    if (error instanceof CircuitDefect) return error.message;
    throw error;
  }
}

interface Drawn {
  readonly written: Group;
  readonly parsed: Read;
  readonly world: World;
}

/** Read and built, with a circuit that has a solution. */
function built(written: Group, name: string): Stepped<Drawn> {
  const parsed = readGroup(written, name);
  if (!parsed.ok) return parsed;
  const { scenario, hash } = parsed.value;
  const world = build(scenario, hash, 1);
  const why = unsolved(world);
  return why === null ? { ok: true, value: { written, parsed: parsed.value, world } } : no('circuit', why);
}

/** The scene drawn: varied, with faults that each do harm, told in its own words. */
function drawn(draw: Draw, base: Group, bounds: Bounds, id: string, from: ScenarioVariant): Stepped<Drawn> {
  const varied = { ...vary(draw, base, bounds), faults: [], 'look-alikes': [] };
  const bare = readGroup(varied, id);
  if (!bare.ok) return bare;
  const { scenario } = bare.value;
  const laid = built(layFaults(draw, base, varied, { scenario, world: build(scenario, '') }, bounds), id);
  if (!laid.ok) return laid;
  // Before the hazards, which cost more than all that is asked before them.
  const odd = oddScene(laid.value.parsed.scenario, laid.value.world);
  if (odd !== null) return no('odd', odd);
  const behind = new Set(hazardsIn(laid.value.world).flatMap(({ causes }) => causes));
  const rows = rowsAt(laid.value.written, 'faults');
  const faults = rows.filter((row) => behind.has(String(row.id)));
  if (faults.length < bounds.faults.least || (faults.length === 0 && rows.length > 0)) {
    const idle = rows.filter((row) => !faults.includes(row)).map(({ kind, on }) => `${String(kind)} on ${String(on)}`);
    return no('harmless', `nothing follows from it: ${idle.join(', ')}`);
  }
  const harmful = faults.length === rows.length ? laid : built({ ...laid.value.written, faults }, id);
  if (!harmful.ok) return harmful;
  return built(retell(harmful.value.written, harmful.value.world, id, from), id);
}

export interface Asked {
  readonly base: Base;
  readonly bounds: Bounds;
  readonly seed: number;
  /** Which of the variants of the seed. */
  readonly number: number;
  /** Which draw for it. */
  readonly draw: number;
  readonly grade?: Grade;
}

export type Outcome = { readonly variant: Variant } | { readonly rejected: Rejected };

/** What comes of one draw. */
export function variantFrom({ base, bounds, seed, number, draw: which, grade }: Asked): Outcome {
  const id = `${base.id}-${seed}-${number}`;
  const draw = new Draw(`variant ${base.id} ${seed} ${number} ${which}`);
  const scene = drawn(draw, readWritten(base.text), bounds, id, { of: base.id, seed, number });
  if (!scene.ok) return scene;
  const { written, parsed, world } = scene.value;
  const odd = oddIn(parsed.scenario, world);
  if (odd !== null) return no('odd', odd);
  const hazards = hazardsIn(world);
  const causes = parsed.scenario.faults.map((fault) => fault.id);
  const before = pointsBefore(world, causes, parsed.scenario.lookAlikes.length, hazards);
  if (grade !== undefined && !reachable(before, grade)) return no('grade', `harder than grade ${grade}`);
  const proof = prove(world, { seed: 1, ...SHORT });
  const failed = proof.claims.find(({ outcome }) => outcome === 'fails');
  if (failed !== undefined || proof.par === null) return no('proof', failed?.words ?? 'it has no par');
  if (bounds.end !== 'any' && proof.par.end !== bounds.end) return no('end', `it ends ${proof.par.end} at best`);
  const difficulty = difficultyOf(before, proof);
  if (grade !== undefined && difficulty.grade !== grade) return no('grade', `grade ${difficulty.grade}`);
  const asProved = { ...parsed.scenario, grade: difficulty.grade };
  const yaml = writeYaml({ ...written, grade: difficulty.grade }, head(base, seed, number));
  const graded = parse(yaml, id, options);
  if (!graded.ok) return no('parse', graded.problems[0]?.message ?? 'no scenario');
  // The grade stands in the file, and neither the World's physics nor its proof reads it.
  const { scenario, hash } = graded;
  if (hash !== scenarioHash(asProved)) return no('parse', 'it reads otherwise than it was drawn');
  return {
    variant: {
      id,
      base: base.id,
      seed,
      number,
      yaml,
      scenario,
      hash,
      difficulty,
      proof: { ...proof, scenarioHash: hash },
    },
  };
}
