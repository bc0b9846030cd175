/** A bench with a control taken, by what the control is: devices opened and tagged, grounds put on, sources parted, people elsewhere. */
import { componentKind } from '../../../src/engine/catalogue/components.ts';
import { netAt } from '../../../src/engine/circuit/elementsOf.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { sectionOf } from '../../../src/engine/hazards/section.ts';
import type { Reach } from '../../../src/engine/hazards/types.ts';
import { pointsOf } from '../../../src/engine/world/edit.ts';
import type { Jumper, Part, Person, World } from '../../../src/engine/world/types.ts';

/** What stands between a reach and its World after the control; the same reach if only the World changes. */
export interface Taken {
  readonly world: World;
  readonly reach: Reach;
}

const withParts = (world: World, change: (part: Part) => Part): World => ({ ...world, parts: world.parts.map(change) });

/** Everything that breaks a contact worked, and tagged: by its first operation that does. */
const opened = (part: Part): Part => {
  const breaking = componentKind(part.kind).operations.find(
    ({ breaks, from, by }) =>
      by !== 'owner' &&
      breaks !== undefined &&
      Object.entries(from).every(([name, positions]) => positions.includes(part.state[name] ?? '')),
  );
  const tags = componentKind(part.kind).othersMay.length > 0 ? ['crew'] : part.tags;
  return breaking === undefined ? { ...part, tags } : { ...part, state: { ...part.state, ...breaking.to }, tags };
};

const metersOut = (world: World): World =>
  withParts(world, (part) =>
    componentKind(part.kind).states.position?.includes('blanked')
      ? { ...part, state: { ...part.state, position: 'blanked' }, tags: ['crew'] }
      : part,
  );

const LIVE = 20;

/** A ground on everything that was alive and is not the line toward the source. */
const groundsOn = (world: World, before: World): readonly Jumper[] => {
  const source = world.parts.find(({ id }) => id === 'p1.source');
  const phases = ['line', 'a', 'b', 'c'].filter((terminal) => source?.nets[terminal] !== undefined);
  const ahead = new Set(phases.flatMap((terminal) => [...sectionOf(world, `p1.source/${terminal}`)]));
  const solution = solveCircuit(before);
  const neutral = 'p2.neutral-spool/neutral';
  const nets = new Set<string>();
  return pointsOf(world).flatMap((point, i): readonly Jumper[] => {
    const net = netAt(world, point);
    if (ahead.has(net) || nets.has(net) || net === netAt(world, neutral)) return [];
    if (
      solution.between(point, 'earth') < LIVE &&
      solveCircuit(before, { credible: true }).between(point, 'earth') < LIVE
    )
      return [];
    nets.add(net);
    return [{ id: `ground-on-${i}`, tool: 'ground-1', points: [neutral, point] }];
  });
};

const wearing = (world: World, tools: readonly string[]): World => ({
  ...world,
  people: world.people.map((person): Person => (person.role === 'trainee' ? { ...person, wearing: tools } : person)),
  tools: world.tools.map((tool) =>
    tools.includes(tool.id) || tool.kind === 'stick'
      ? {
          ...tool,
          wet: false,
          checks: { ...tool.checks, 'air-test': { minute: 0, ok: true }, wipe: { minute: 0, ok: true } },
        }
      : tool,
  ),
});

const openedByFault = (world: World): readonly Jumper[] =>
  world.parts
    .filter((part) => part.faults.some(({ id }) => id === 'it'))
    .map((part) => {
      const points = Object.keys(componentKind(part.kind).points).map((terminal) => `${part.id}/${terminal}`);
      return { id: 'bridge', tool: 'bond-1', points: ['p2.neutral-spool/neutral', ...points] };
    });

/** Elsewhere on the ground, hands off; by itself what it is to stay clear. */
const away = (world: World, reach: Reach): Reach => {
  const far = world.stands.find(({ id }) => id === 'p1.road');
  if (far === undefined) throw new Error('no place to stay clear at');
  return {
    ...reach,
    stand: far.id,
    at: far.feet,
    aloft: false,
    touches: [],
    switches: null,
    climbs: null,
    works: false,
  };
};

const through = (reach: Reach, by: { readonly stick: string | null; readonly gloves: string | null }): Reach => ({
  ...reach,
  touches: reach.touches.map((touch) => ({ ...touch, through: by })),
  switches: reach.switches && { ...reach.switches, through: by },
});

/** The controls that a bench can take by itself; people's and tools' own have their tests. */
export const controls: Readonly<Record<string, (world: World, reach: Reach) => Taken>> = {
  'deenergize-ground': (world, reach) => {
    const dead = metersOut(withParts(world, opened));
    const clearance = { device: 'recloser 5', state: 'held', minute: 0 } as const;
    const open: World = { ...dead, orders: { ...dead.orders, clearance } };
    return { world: { ...open, jumpers: [...open.jumpers, ...groundsOn(open, world)] }, reach };
  },
  'isolate-source': (world, reach) => ({ world: metersOut(world), reach }),
  'bridge-bond': (world, reach) => ({ world: { ...world, jumpers: openedByFault(world) }, reach }),
  'short-secondary': (world, reach) => ({
    world: {
      ...metersOut(withParts(world, opened)),
      jumpers: [
        { id: 'short', tool: 'short-1', points: ['p2.transformer/x2', 'p2.transformer/x1', 'p2.transformer/x3'] },
      ],
    },
    reach,
  }),
  'support-conductor': (world, reach) => ({
    world: withParts(world, (part) => (part.end === null ? part : { ...part, supported: true })),
    reach,
  }),
  'rubber-gloves': (world, reach) => ({
    world: wearing(world, ['gloves-1']),
    reach: through(reach, { stick: null, gloves: 'gloves-1' }),
  }),
  'hot-stick-only': (world, reach) => ({
    world: wearing(world, []),
    reach: through(reach, { stick: 'stick-1', gloves: null }),
  }),
  'face-and-arc-wear': (world, reach) => ({ world: wearing(world, ['shield-1']), reach }),
  'keep-clear': (world, reach) => ({ world, reach: away(world, reach) }),
  'hand-over': (world, reach) => ({ world, reach: away(world, reach) }),
};
