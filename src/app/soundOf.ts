/**
 * Which single sound goes with what happened, from where and how loud; most things make none. What the trainee's own hands do is at
 * arm's length; what operates or flashes sounds from its place, as loud as close by within CLOSE metres, then 20 dB less for each
 * ten times as far.
 */

import type { Snapshot } from '../drill/types.ts';
import type { Act, WorldEvent } from '../engine/acts/types.ts';
import { toolKind } from '../engine/catalogue/tools.ts';
import type { Vec3 } from '../engine/math/vec3.ts';
import { sub } from '../engine/math/vec3.ts';
import { eyeAt } from '../engine/senses/signsFrom.ts';
import { findPart, standById, toolById } from '../engine/world/edit.ts';
import type { World } from '../engine/world/types.ts';
import type { OnceName } from '../sound/types.ts';
import { usual } from '../sound/usual.ts';

/** Metres within which a report is as loud as it gets. */
const CLOSE = 15;

export interface Sounded {
  readonly sound: OnceName;
  /** Radians, 0 where the view looks at yaw 0, positive to the right; null: from all round, or from the radio. */
  readonly bearing: number | null;
  readonly level: number;
}

/** What a device sounds like that operates by itself; a fuse's report for all others. */
const operating: Readonly<Record<string, OnceName>> = {
  'main-breaker': 'breaker-trip',
  'interlocked-main': 'breaker-trip',
  'panel-cord': 'breaker-trip',
  generator: 'breaker-trip',
  'governed-generator': 'breaker-trip',
};

/** What an operation by one's own hand or stick sounds like. */
const worked: Readonly<Record<string, OnceName>> = {
  cutout: 'cutout-close',
  disconnect: 'cutout-close',
  meter: 'meter-click',
};

const byHand = (world: World, act: Act | undefined, event: WorldEvent): OnceName | null => {
  switch (act?.act) {
    case 'operate':
      return event.event === 'done' && event.on === act.part
        ? (worked[findPart(world, act.part)?.kind ?? ''] ?? null)
        : null;
    case 'sound': {
      if (event.event !== 'heard' || findPart(world, event.on ?? '')?.pole !== act.pole) return null;
      const test = world.knowledge.tests.findLast(({ on, test: way }) => way === 'sound' && on === event.on);
      return test === undefined ? null : test.sign === null ? 'hammer-sound' : 'hammer-dull';
    }
    case 'check-tool': {
      if (event.on !== act.tool) return null;
      if (act.check === 'wipe') return 'stick-wipe';
      const passed = toolById(world, act.tool)?.checks[act.check]?.ok === true;
      return act.check === 'self-test' && passed ? 'detector-tone' : null;
    }
    case 'test': {
      const reading = world.knowledge.readings.at(-1);
      const tool = toolById(world, act.tool);
      const tells = tool !== null && toolKind(tool.kind).thresholdVolts !== undefined;
      return event.event === 'reading' && tells && reading?.shows === 'voltage' ? 'detector-tone' : null;
    }
    default:
      return null;
  }
};

/** The dispatcher answers with the carrier only, and calls with two notes. */
const onRadio = (act: Act | undefined): OnceName =>
  act !== undefined && ['acknowledge', 'ask', 'tell', 'clearance', 'order', 'close-out', 'hand-over'].includes(act.act)
    ? 'radio-squelch'
    : 'dispatcher-tone';

const bearingTo = ([x, y]: Vec3): number => -Math.atan2(y, x);

const from = (world: World, stand: string, on: string | null, sound: OnceName, near: boolean): Sounded => {
  const { level } = usual[sound];
  const part = findPart(world, on ?? '');
  if (part === null || standById(world, stand) === null) return { sound, bearing: null, level };
  const way = sub(part.at, eyeAt(world, stand));
  const far = Math.hypot(...way);
  return { sound, bearing: bearingTo(way), level: near ? level : level - 20 * Math.log10(Math.max(1, far / CLOSE)) };
};

/** The sound of an event, or null. */
export const soundOf = (
  event: WorldEvent,
  { world, stand, log }: Pick<Snapshot, 'world' | 'stand' | 'log'>,
): Sounded | null => {
  const act = log.entries.at(-1)?.act;
  const { on } = event;
  if (event.event === 'said' && on === 'dispatcher') return from(world, stand, null, onRadio(act), true);
  if (event.event === 'heard' && on === 'sky') return from(world, stand, null, 'thunder', true);
  if (event.event === 'operated')
    return from(world, stand, on, operating[findPart(world, on ?? '')?.kind ?? ''] ?? 'fuse-bang', false);
  if (event.event === 'flash' || event.event === 'flashover') return from(world, stand, on, 'flash', false);
  const sound = byHand(world, act, event);
  return sound === null ? null : from(world, stand, on, sound, true);
};
