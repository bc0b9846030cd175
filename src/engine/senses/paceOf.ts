/** How fast what is heard runs: an engine set slows under the load that the circuit puts on it, and its note sags. */
import { componentKind } from '../catalogue/components.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { speedUnderLoad } from '../standards/generator.ts';
import { findPart } from '../world/edit.ts';
import type { World } from '../world/types.ts';

/** Speed and note of a part's sound against its rated speed; 1 for what no load slows. */
export const paceOf = (world: World, id: string): number => {
  const part = findPart(world, id);
  if (part === null) return 1;
  const load = componentKind(part.kind).sound?.(part)?.load;
  if (load === undefined) return 1;
  const solution = solveCircuit(world);
  const drawn = load.branches.reduce((sum, branch) => sum + load.volts * solution.branchCurrent(part.id, branch), 0);
  return speedUnderLoad(drawn / load.rating);
};
