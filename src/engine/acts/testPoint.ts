/**
 * A voltage test of one point: detector on a stick for primary, hand-held tester for secondary. The reading enters the
 * World as the instrument shows it. A primary detector tells voltage from none by its threshold; a low-voltage tester
 * shows whole volts and is overloaded above its rating.
 */
import { toolKind } from '../catalogue/tools.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { toolById } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { PointId, Reading, Tool, World } from '../world/types.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { pointWords } from './pointWords.ts';
import { beyondReach, standing, through } from './presence.ts';
import { sticksOf, testersOf } from './toolsFor.ts';
import type { WorldEvent } from './types.ts';

function readingOf(world: World, tool: Tool, point: PointId): Reading {
  const { minute } = world.clock;
  const { volts } = solveCircuit(world).point(point);
  const { thresholdVolts } = toolKind(tool.kind);
  if (tool.faults.length > 0 || overloaded(world, tool, point)) {
    return { point, tool: tool.id, shows: 'nothing', volts: null, minute };
  }
  if (thresholdVolts !== undefined) {
    return { point, tool: tool.id, shows: volts >= thresholdVolts ? 'voltage' : 'no voltage', volts: null, minute };
  }
  const shown = Math.round(volts);
  return { point, tool: tool.id, shows: shown >= 1 ? 'voltage' : 'no voltage', volts: shown, minute };
}

const overloaded = (world: World, tool: Tool, point: PointId): boolean =>
  tool.ratedVolts !== null && solveCircuit(world).point(point).volts > tool.ratedVolts;

const shown: Readonly<Record<Reading['shows'], string>> = {
  voltage: 'tone and lamp: voltage',
  'no voltage': 'no tone, no lamp',
  nothing: 'no tone, no lamp',
};

function wordsOf(world: World, tool: Tool, reading: Reading): string {
  const what = reading.volts === null ? shown[reading.shows] : `${reading.volts} V`;
  return `${tool.name} on the ${pointWords(world, reading.point)}: ${what}.`;
}

function eventsOf(world: World, tool: Tool, reading: Reading): readonly WorldEvent[] {
  const part = reading.point.split('/')[0] ?? null;
  const flash = overloaded(world, tool, reading.point)
    ? [event('flash', part, `${tool.name}: a crack and a flash at the tip, the display is dark.`)]
    : [];
  return flash.length > 0 ? flash : [event('reading', part, wordsOf(world, tool, reading))];
}

export const test: ActKind<'test'> = {
  minutes: () => 1,
  refuse: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) return 'there is no such tool on the truck';
    const { testsOf } = toolKind(tool.kind);
    if (testsOf === undefined) return 'that tool tests no voltage';
    if (testsOf === 'primary' && act.stick === null) return 'that detector goes on a stick';
    if (testsOf === 'secondary' && act.stick !== null) return 'that tester is held in the hand';
    return beyondReach(world, act.point, act.stick);
  },
  apply: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) throw new Error(`no tool is called ${act.tool}`);
    const reading = readingOf(world, tool, act.point);
    return outcome(
      { ...world, knowledge: { ...world.knowledge, readings: [...world.knowledge.readings, reading] } },
      eventsOf(world, tool, reading),
      [{ ...standing(world, 10), touches: [{ point: act.point, through: through(world, act.stick) }] }],
    );
  },
  offers: (world) =>
    world.parts.flatMap((part) =>
      [...bareTerminals(part)].sort().flatMap((terminal) =>
        testersOf(world).flatMap((tool) =>
          (toolKind(tool.kind).testsOf === 'primary' ? sticksOf(world) : [null]).map((stick) => ({
            act: { act: 'test', point: `${part.id}/${terminal}`, tool: tool.id, stick: stick?.id ?? null },
            label: `Test the ${pointWords(world, `${part.id}/${terminal}`)}, with ${tool.name}${stick ? ` on ${stick.name}` : ''}`,
            by: stick ? 'stick' : 'hands',
            about: part.id,
          })),
        ),
      ),
    ),
};
