/**
 * A leaking insulator that flashes over now. Wet surface, and a source behind it that can feed an arc: then it may, by the
 * World's own chance; the arc is cleared by whatever protects it. Judging takes a flashover for credible always
 * (hazards/credibleStates.ts); this is only what happens. The arc's least current and the chance a minute are estimates.
 */
import { faultKind } from '../catalogue/faults.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { operatingTime } from '../circuit/operatingTime.ts';
import { HORIZON } from '../circuit/settle.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { nextUniform } from '../math/random.ts';
import type { Amperes, Minutes, Seconds } from '../units/quantities.ts';
import { findPart, withPart } from '../world/edit.ts';
import type { LaidFault, Part, World } from '../world/types.ts';
import { event } from './kind.ts';
import type { WorldEvent } from './types.ts';

/** Current below which an arc over a wet insulator does not live. */
const arcAmperes: Amperes = 5;
/** Wetness from which the surface leads. */
const wetEnough = 0.5;
/** Chance in a minute at full wetness. */
const perMinute = 0.1;

type Leak = { readonly part: Part; readonly fault: LaidFault };

const findLeaks = (world: World): readonly Leak[] => {
  const leaks = world.parts.flatMap((part) =>
    part.faults.filter(({ kind }) => faultKind(kind).leaks.some(({ soil }) => !soil)).map((fault) => ({ part, fault })),
  );
  if (leaks.length === 0) return [];
  const flashed = solveCircuit(world, { credible: true });
  return leaks.filter(({ part, fault }) =>
    faultKind(fault.kind).leaks.some(({ name }) => flashed.branchCurrent(part.id, name) >= arcAmperes),
  );
};

interface Kept {
  readonly jumpers: World['jumpers'];
  readonly resistivity: number;
  readonly leaks: readonly Leak[];
}

// A list of parts is never changed in place; with jumpers and soil it is all that leaks follow from.
const kept = new WeakMap<World['parts'], Kept>();

/** Leaks that an arc could follow now, in the order of parts. */
const readyLeaks = (world: World): readonly Leak[] => {
  const { parts, jumpers, site } = world;
  const known = kept.get(parts);
  if (known?.jumpers === jumpers && known.resistivity === site.resistivity) return known.leaks;
  const leaks = findLeaks(world);
  kept.set(parts, { jumpers, resistivity: site.resistivity, leaks });
  return leaks;
};

/** The World after protection has cleared the arc; devices go by time, one after the other. */
function cleared(start: World): { readonly world: World; readonly operated: readonly string[] } {
  let world = start;
  const operated: string[] = [];
  for (;;) {
    const arc = solveCircuit(world, { credible: true });
    let first: {
      readonly part: Part;
      readonly opens: Readonly<Record<string, string>>;
      readonly seconds: Seconds;
    } | null = null;
    for (const part of world.parts) {
      for (const branch of branchesOf(part)) {
        if (branch.type !== 'series' || !branch.protects) continue;
        const seconds = operatingTime(part.id, branch.protects, arc.branchCurrent(part.id, branch.name));
        if (seconds <= HORIZON && (first === null || seconds < first.seconds)) {
          first = { part, opens: branch.protects.opens, seconds };
        }
      }
    }
    if (first === null) return { world, operated };
    world = withPart(world, first.part.id, { state: { ...first.part.state, ...first.opens } });
    operated.push(first.part.id);
  }
}

/** Lets leaking insulators flash over, or not, during so many minutes; the draw leaves its mark in the World's chance. */
export function flashOver(
  world: World,
  minutes: Minutes,
): { readonly world: World; readonly events: readonly WorldEvent[] } {
  const { wetness } = world.site;
  const [leak] = minutes > 0 && wetness >= wetEnough ? readyLeaks(world) : [];
  if (!leak) return { world, events: [] };
  const [drawn, chance] = nextUniform(world.chance);
  const drawnWorld = { ...world, chance };
  if (drawn >= Math.min(1, perMinute * wetness * minutes)) return { world: drawnWorld, events: [] };
  const after = cleared(drawnWorld);
  return {
    world: after.world,
    events: [
      event('flashover', leak.part.id, `A flash and a crack up at the ${leak.part.name}.`),
      ...after.operated.map((id) => event('operated', id, `A bang: ${findPart(world, id)?.name ?? id}.`)),
    ],
  };
}
