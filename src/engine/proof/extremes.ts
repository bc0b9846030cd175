/**
 * Bounds to what a drill can come to, for arguments over all its states. A moment in which every bare metal stands at so
 * many volts: at more than two sources out of step give, no state is worse for whoever keeps away; at none, no state is
 * better for whoever is struck. The crew at its best: all that can be worn is worn, tools are checked and dry, everything
 * is covered and held as far as there is a tool for it at all, the weather is calm, and what can be mended is mended.
 */
import type { Act } from '../acts/types.ts';
import { repairKind, repairKinds } from '../catalogue/repairs.ts';
import { toolKind } from '../catalogue/tools.ts';
import type { ToolKind } from '../catalogue/types.ts';
import { electrodesOf, mostStep } from '../circuit/localEarth.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import type { CircuitSolution, PointState } from '../circuit/types.ts';
import type { Moment } from '../hazards/moment.ts';
import { precondition } from '../hazards/readiness.ts';
import type { Volts } from '../units/quantities.ts';
import { trainee, withPerson } from '../world/edit.ts';
import type { Part, Tool, World } from '../world/types.ts';

/** A solution in which everything stands at so many volts, and every electrode drives what it can of that into the soil. */
function solutionAt(world: World, volts: Volts): CircuitSolution {
  const real = solveCircuit(world);
  const electrodes = electrodesOf(world);
  const point = (id: string): PointState => ({
    ...real.point(id),
    volts,
    live: volts > 0,
    throughKilohm: volts / 1000,
    sources: volts > 0 ? ['system'] : [],
  });
  return {
    elements: real.elements,
    get points() {
      return real.points.map(({ point: id }) => point(id));
    },
    point,
    between: () => volts,
    step: (a, b) => mostStep(electrodes, world.site.resistivity, [a, b], volts),
    bodyCurrent: (_from, _to, ohms) => volts / ohms,
    branchCurrent: (part, branch) => real.branchCurrent(part, branch),
  };
}

/** The World with every bare metal at so many volts. */
export function momentAt(world: World, volts: Volts): Moment {
  const solution = solutionAt(world, volts);
  return { world, present: solution, states: [{ world, flashed: false, words: '', solution }], steps: false };
}

const worn = ['hands', 'arms', 'head', 'face', 'body', 'vest'] as const;

/** Dry, every check done and found good. */
export const ready = (tool: Tool): Tool => ({
  ...tool,
  wet: false,
  checks: Object.fromEntries(toolKind(tool.kind).checks.map((check) => [check, { minute: 0, ok: true }])),
});

/** Of what serves, whole and in test if there is one, that of the highest rating. */
function strongest(world: World, serves: (kind: ToolKind) => boolean): Tool | null {
  const volts = ({ ratedVolts, kind }: Tool): Volts => ratedVolts ?? toolKind(kind).ratedVolts ?? 0;
  const able = world.tools.filter(({ kind }) => serves(toolKind(kind)));
  const good = able.filter(
    ({ id }) => precondition(world, 'tool-in-test', { tool: id }) && precondition(world, 'tool-sound', { tool: id }),
  );
  return (good.length > 0 ? good : able).reduce<Tool | null>(
    (most, tool) => (most === null || volts(tool) > volts(most) ? tool : most),
    null,
  );
}

/** The World with the trainee wearing the strongest of all that can be worn. */
export const dressed = (world: World): World =>
  withPerson(world, trainee(world).id, {
    wearing: worn.flatMap((on) => strongest(world, ({ wornOn }) => wornOn === on)?.id ?? []),
  });

export const briefed = (world: World, topics: readonly string[]): World => ({
  ...world,
  paper: {
    ...world.paper,
    briefings: [{ minute: world.clock.minute, topics, heard: world.people.map(({ id }) => id), rescue: true }],
  },
});

/** The World with every pole looked at and sounded. */
export function polesChecked(world: World): World {
  const { minute } = world.clock;
  const poles = world.parts.filter(({ id, pole }) => pole !== null && id === `${pole}.pole`);
  const looks = poles.map(({ id }) => ({ part: id, stand: '', aid: 'eyes' as const, minute, seen: [] }));
  const tests = poles.map(({ id }) => ({ on: id, test: 'sound', result: '', sign: null, minute }));
  return { ...world, knowledge: { ...world.knowledge, looks, tests: [...world.knowledge.tests, ...tests] } };
}

/** Whether a repair mends it. */
const canBeMended = ({ kind: of }: Part, fault: string): boolean =>
  repairKinds.some(({ on, mends }) => on.includes(of) && mends.includes(fault));

/** The World with the crew at its best, and all mended but what `act` itself is to mend. */
export function atBest(world: World, act: Extract<Act, { act: 'repair' }>): World {
  const { mends } = repairKind(act.repair);
  const stays = (part: Part, fault: string): boolean =>
    !canBeMended(part, fault) || (part.id === act.part && mends.includes(fault));
  const supported = strongest(world, ({ supports }) => supports === true) !== null;
  const cover = strongest(world, ({ barrier }) => barrier === 'cover');
  return {
    ...dressed(world),
    parts: world.parts.map((part) => ({
      ...part,
      faults: part.faults.filter(({ kind }) => stays(part, kind)),
      supported,
    })),
    tools: world.tools.map(ready),
    covers: cover === null ? [] : world.parts.map(({ id }) => ({ part: id, tool: cover.id })),
    site: { ...world.site, windMs: 0, wetness: 0, precipitation: 'none', lightning: 'none', flooded: false },
  };
}
