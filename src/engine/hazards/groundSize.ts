/**
 * Whether protective grounds carry what can come: cable against the fault current of the supply, cleared within 30 cycles
 * (ASTM F855 withstand ratings, standards/groundingCable.ts; 29 CFR 1910.269(n)(4)), clamps whole. A set whose size is
 * not said is not judged. Left out: lower fault currents farther out on the line, higher X/R.
 */
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { groundingCables, withstandCurrent } from '../standards/groundingCable.ts';
import type { Seconds } from '../units/quantities.ts';
import { toolById } from '../world/edit.ts';
import type { Jumper, Tool, World } from '../world/types.ts';

const CLEARED: Seconds = 0.5;

/** Whether a set of that size carries the fault current here. */
export function isSized(world: World, tool: Tool): boolean {
  const size = tool.words.cable ?? toolKind(tool.kind).cable;
  const cable = groundingCables.find((name) => name === size);
  if (cable === undefined) return true;
  const { faultAmps, threePhaseAmps = 0 } = world.given.supply;
  return (withstandCurrent(cable, CLEARED) ?? 0) >= Math.max(faultAmps, threePhaseAmps);
}

const holds = (world: World, jumper: Jumper): boolean => {
  const tool = toolById(world, jumper.tool);
  return tool === null || (isSized(world, tool) && !tool.faults.some(({ kind }) => !faultKind(kind).benign));
};

/** Jumpers that stay on when the line comes back; the same list if all do. */
export function holdingJumpers(world: World): World['jumpers'] {
  const holding = world.jumpers.filter((jumper) => holds(world, jumper));
  return holding.length === world.jumpers.length ? world.jumpers : holding;
}
