/** Where in the call a World stands; the same function for machine, screens and replay. */
import type { World } from '../world/types.ts';
import { acknowledged } from './acknowledge.ts';
import { everyoneClearTest } from './everyoneClear.ts';
import { holdTag } from './tag.ts';

export type StageName = 'call' | 'survey' | 'briefing' | 'make-safe' | 'work' | 'restore' | 'debrief';

/** Everyone called clear, or the clearance given back: what is left is to restore. */
const restoring = (world: World): boolean =>
  world.orders.clearance?.state === 'released' || world.knowledge.tests.some(({ test }) => test === everyoneClearTest);

const working = (world: World): boolean =>
  world.jumpers.length > 0 || world.people.some(({ role, aloftBy }) => role === 'trainee' && aloftBy !== null);

const makingSafe = (world: World): boolean =>
  world.orders.clearance !== null ||
  world.knowledge.readings.length > 0 ||
  world.parts.some(({ tags }) => tags.includes(holdTag)) ||
  world.paper.briefings.length > 0;

/** The stage of the call, a function of World alone. */
export function stageOf(world: World): StageName {
  if (world.ended !== null) return 'debrief';
  if (!world.orders.reported.includes(acknowledged)) return 'call';
  if (working(world)) return 'work';
  if (restoring(world)) return 'restore';
  if (makingSafe(world)) return 'make-safe';
  return world.paper.plans.length > 0 ? 'briefing' : 'survey';
}
