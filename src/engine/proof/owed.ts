/**
 * What a careful worker owes before hands come near metal, whatever luck made of it: a line in ordinary service is
 * treated as alive until it is tested by a proved tester and, above 600 V, under a clearance, its sources known, grounded
 * (29 CFR 1910.269(m)(3), (n)(3); 1910.333(b)(2)(iv)(B)). The same mechanisms are asked what the reach would meet if every device stood in service
 * and nothing were broken; each point met and not tested dead is owed. A set of grounds goes on only after the test
 * (n)(5). So no proven route rests on what the crew could not know.
 */
import { componentKind } from '../catalogue/components.ts';
import { branchesOf } from '../circuit/elementsOf.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { meetingsAt } from '../hazards/exposuresOf.ts';
import { momentOf } from '../hazards/moment.ts';
import { type Precondition, precondition } from '../hazards/readiness.ts';
import type { Reach } from '../hazards/types.ts';
import { findPart } from '../world/edit.ts';
import type { Part, PointId, World } from '../world/types.ts';
import { safetyKey } from './canonicalKey.ts';

/** Above this the metal must be grounded too. */
export const GROUNDED_FROM = 600;
/** Below this there is nothing to test for. */
export const ALIVE_FROM = 50;

const inService = (part: Part): Part => {
  const { states } = componentKind(part.kind);
  const state = Object.fromEntries(
    Object.keys(part.state).map((name) => [name, states[name]?.[0] ?? part.state[name] ?? '']),
  );
  return { ...part, state, faults: [], supported: false };
};

interface Metal {
  readonly point: PointId;
  readonly volts: number;
}

/** The World's line as it is in ordinary service; people, tools and covers as they are. */
export class Service {
  private readonly parts: readonly Part[];

  constructor(start: World) {
    this.parts = start.parts.map(inService);
  }

  of(world: World): World {
    return { ...world, parts: this.parts, jumpers: [] };
  }

  private readonly kept = new Map<string, readonly Metal[]>();

  /** Metal that the reach would meet alive in ordinary service; kept by what decides it. */
  metBy(reach: Reach, world: World): readonly Metal[] {
    const { tools, people, covers, site } = world;
    const touches = reach.touches.map(({ point, through }) => `${point}<${through.stick}<${through.gloves}`);
    const key = [reach.stand, reach.works, reach.disturbs, touches.join(), safetyKey(tools, people, covers, site)].join(
      '|',
    );
    const known = this.kept.get(key);
    if (known !== undefined) return known;
    const alive: Reach = { ...reach, switches: null, climbs: null };
    const found = meetingsAt(alive, momentOf(this.of(world), false))
      .filter(({ mechanism }) => mechanism === 'contact' || mechanism === 'approach')
      .flatMap(({ point }) => (point === null ? [] : [{ point, volts: this.volts(world, point) }]));
    this.kept.set(key, found);
    return found;
  }

  /** Volts of a point to local earth in ordinary service. */
  volts(world: World, point: PointId): number {
    return solveCircuit(this.of(world)).between(point, 'earth');
  }
}

export interface Owed {
  readonly point: PointId;
  readonly lacks: 'clearance' | 'sources' | 'test' | 'proof' | 'ground';
}

const onPrimary: readonly (readonly [Owed['lacks'], Precondition])[] = [
  ['clearance', 'clearance'],
  ['sources', 'source-known'],
];
const onAny: readonly (readonly [Owed['lacks'], Precondition])[] = [
  ['test', 'tested-dead'],
  ['proof', 'detector-proved'],
];

/** Whether the device that the clearance is on stands open and tagged now. */
function isApart(world: World): boolean {
  const device = findPart(world, world.orders.clearance?.device ?? '');
  return device !== null && device.tags.length > 0 && branchesOf(device).every(({ type }) => type !== 'series');
}

/** The first of what deenergizing asks that does not hold for the metal of the point. */
function lacking(world: World, point: PointId, volts: number, isGrounding: boolean): readonly Owed[] {
  const asked = [
    ...(volts > GROUNDED_FROM ? onPrimary : []),
    ...onAny,
    ...(volts > GROUNDED_FROM && !isGrounding ? ([['ground', 'grounded']] as const) : []),
  ];
  const first = asked.find(
    ([lacks, id]) => !precondition(world, id, { point }) || (lacks === 'clearance' && !isApart(world)),
  );
  return first === undefined ? [] : [{ point, lacks: first[0] }];
}

/** What the reach owes in the World before it. */
export function owedBy(service: Service, reach: Reach, before: World, puts: readonly PointId[]): readonly Owed[] {
  const clamps = puts
    .filter((point) => service.volts(before, point) >= ALIVE_FROM)
    .flatMap((point) => lacking(before, point, service.volts(before, point), true));
  if (puts.length > 0) return clamps;
  const hands = reach.works || reach.touches.some(({ through }) => through.stick === null);
  if (!hands) return [];
  return service.metBy(reach, before).flatMap(({ point, volts }) => lacking(before, point, volts, false));
}
