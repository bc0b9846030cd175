/**
 * What an act relies on that is not there: a tool in hand or worn, a second worker, a dispatcher. Such a loss bites by the
 * act that exposes somebody because of it. A tool fails its rule or has a fault; a worker is not trained, not fit, not
 * coming; a dispatcher who means another circuit is relied on once something was asked for.
 */
import { dispatcherMinutes, isolatingDevices } from '../acts/clearance.ts';
import type { Act } from '../acts/types.ts';
import { toolKind } from '../catalogue/tools.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { crewLosses } from '../hazards/crew.ts';
import { faulty, precondition } from '../hazards/readiness.ts';
import type { Hazard, Reach } from '../hazards/types.ts';
import { personById, toolById } from '../world/edit.ts';
import type { Tool, World } from '../world/types.ts';
import type { Obstacle } from './peek.ts';

/** Whether a tool is past its test. */
export const isOverdue = (world: World, { id }: Tool): boolean => !precondition(world, 'tool-in-test', { tool: id });

const isLost = (world: World, id: string): boolean => {
  const tool = toolById(world, id);
  return tool !== null && (isOverdue(world, tool) || faulty(tool));
};

/** Tools that an act trusts, those worn where it touches included. */
const trusted = (act: Act, reach: readonly Reach[]): readonly string[] => [
  ...new Set([
    ...('stick' in act && act.stick !== null ? [act.stick] : []),
    ...('tool' in act ? [act.tool] : []),
    ...reach.flatMap(({ touches }) => touches.flatMap(({ through: { gloves } }) => gloves ?? [])),
  ]),
];

/** A tester that stays silent on what is alive. */
function isDeceived(before: World, after: World, act: Act): boolean {
  if (act.act !== 'test') return false;
  const reading = after.knowledge.readings.at(-1);
  return reading?.shows === 'nothing' && solveCircuit(before).point(act.point).live;
}

/** People and orders whose loss has to do with what the act exposes to. */
function crewLost(world: World, exposed: readonly Obstacle[]): readonly string[] {
  const failed = new Set(exposed.flatMap((each) => each.failed));
  const isAsked = world.orders.clearance !== null;
  return crewLosses(world)
    .filter((loss) =>
      loss.failed.some((name) => failed.has(name) || (name === 'numbers-matched' && isAsked && exposed.length > 0)),
    )
    .map(({ hazard }) => hazard);
}

/** Hazards of losses that the act meets. */
export function lossesMet(
  world: World,
  act: Act,
  {
    reach,
    obstacles,
    world: after,
  }: { readonly reach: readonly Reach[]; readonly obstacles: readonly Obstacle[]; readonly world: World },
): readonly string[] {
  const exposed = obstacles.filter(({ is }) => is === 'exposed');
  const tools =
    exposed.length > 0 || isDeceived(world, after, act)
      ? trusted(act, reach)
          .filter((id) => isLost(world, id))
          .map((id) => `barrier-loss:${id}`)
      : [];
  return [...tools, ...crewLost(world, exposed)];
}

/** What somebody does first who then relies on what a hazard says is lost: puts it on, asks for the clearance. */
export function relyingOn(world: World, { part }: Hazard): readonly (readonly Act[])[] {
  const tool = toolById(world, part);
  if (tool !== null) {
    return toolKind(tool.kind).wornOn === undefined ? [] : [[{ act: 'wear', tool: part, on: true }]];
  }
  if (personById(world, part)?.role !== 'dispatcher') return [];
  return isolatingDevices(world).map(({ id }) => [
    { act: 'clearance', step: 'request', device: id },
    { act: 'wait', minutes: dispatcherMinutes },
  ]);
}
