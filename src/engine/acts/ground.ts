/** Grounds, bonds and shorts: clamps put on in the order given, taken off as one set, counted. */
import { toolKind } from '../catalogue/tools.ts';
import type { Reach } from '../hazards/types.ts';
import { splitPoint, toolById } from '../world/edit.ts';
import { bareTerminals } from '../world/points.ts';
import type { Jumper, Part, PointId, Tool, World } from '../world/types.ts';
import { nextId } from './finding.ts';
import { type ActKind, event, type Offer, outcome } from './kind.ts';
import { pointWords } from './pointWords.ts';
import { beyondReach, onFoot, standing, through } from './presence.ts';
import { clampSetsOf, sticksOf } from './toolsFor.ts';

/** Minutes a clamp, put on or taken off. */
export const perClamp = 1;

/** Name of the test under which a count is kept in knowledge. */
export const countTest = 'count-grounds';
/** What a count says when nothing was left on. */
export const allOff = 'all off';

function reachOfClamps(world: World, points: readonly PointId[], stick: string | null): Reach {
  const by = through(world, stick);
  return {
    ...standing(world, 60 * perClamp * points.length),
    touches: points.map((point) => ({ point, through: by })),
  };
}

/** Clamps that go on join metal: onto what is alive that is a short. */
function reachOfJoining(world: World, points: readonly PointId[], stick: string | null): Reach {
  const [first, second] = points;
  if (first === undefined || second === undefined) throw new Error('a jumper takes two clamps');
  return {
    ...reachOfClamps(world, points, stick),
    switches: {
      part: splitPoint(second)?.[0] ?? second,
      makes: [first, second],
      breaks: null,
      through: through(world, stick),
      clamps: points,
    },
  };
}

export const ground: ActKind<'ground'> = {
  minutes: (_world, act) => perClamp * act.points.length,
  refuse: (world, act) => {
    const tool = toolById(world, act.tool);
    if (!tool) return 'there is no such tool on the truck';
    const clamps = toolKind(tool.kind).clamps ?? 0;
    if (clamps === 0) return 'that is nothing to ground or bond with';
    if (world.jumpers.some((jumper) => jumper.tool === act.tool)) return 'that set is on already';
    if (act.points.length < 2) return 'a jumper takes two clamps';
    if (act.points.length > clamps) return `that set has ${clamps} clamps`;
    if (new Set(act.points).size < act.points.length) return 'two clamps do not go on one point';
    return firstOf(act.points, (point) => beyondReach(world, point, act.stick));
  },
  apply: (world, act) => {
    const jumper: Jumper = { id: nextId('j', world.jumpers), tool: act.tool, points: [...act.points] };
    return outcome(
      { ...world, jumpers: [...world.jumpers, jumper] },
      [event('done', act.tool, `${nameOf(world, act.tool)}: ${act.points.length} clamps on.`)],
      [reachOfJoining(world, act.points, act.stick)],
    );
  },
  offers: (world) => clampSetsOf(world).flatMap((tool) => offersOf(world, tool)),
};

export const unground: ActKind<'unground'> = {
  minutes: (world, act) => perClamp * (jumperIn(world, act.jumper)?.points.length ?? 0),
  refuse: (world, act) => {
    const jumper = jumperIn(world, act.jumper);
    if (!jumper) return 'there is no such set on';
    return firstOf(jumper.points, (point) => beyondReach(world, point, act.stick));
  },
  apply: (world, act) => {
    const points = [...(jumperIn(world, act.jumper)?.points ?? [])].reverse();
    return outcome(
      { ...world, jumpers: world.jumpers.filter(({ id }) => id !== act.jumper) },
      [event('done', null, 'The set is off, the clamp that was put on last first.')],
      [reachOfClamps(world, points, act.stick)],
    );
  },
  offers: (world) =>
    world.jumpers.flatMap((jumper) =>
      [...sticksOf(world), null].map((stick) => ({
        act: { act: 'unground', jumper: jumper.id, stick: stick?.id ?? null },
        label: `Take ${nameOf(world, jumper.tool)} off ${jumper.points.map((point) => pointWords(world, point)).join(', ')}, ${stick ? `with ${stick.name}` : 'by hand'}`,
        by: stick ? 'stick' : 'hands',
        about: jumper.tool,
      })),
    ),
};

export const countGrounds: ActKind<'count-grounds'> = {
  minutes: () => 1,
  refuse: (world) => onFoot(world),
  apply: (world) => {
    const on = world.jumpers.length;
    const result = on === 0 ? allOff : `${on} still on`;
    const test = { on: 'grounds', test: countTest, result, sign: null, minute: world.clock.minute };
    return outcome({ ...world, knowledge: { ...world.knowledge, tests: [...world.knowledge.tests, test] } }, [
      event('done', null, `You count the sets against those on the truck: ${result}.`),
    ]);
  },
  offers: () => [{ act: { act: 'count-grounds' }, label: 'Count the grounds and shorts', by: 'tools', about: null }],
};

const jumperIn = (world: World, id: string): Jumper | null => world.jumpers.find((jumper) => jumper.id === id) ?? null;

function firstOf<T>(list: readonly T[], reason: (item: T) => string | null): string | null {
  for (const item of list) {
    const found = reason(item);
    if (found) return found;
  }
  return null;
}

const nameOf = (world: World, tool: string): string => toolById(world, tool)?.name ?? tool;

type Place = { readonly point: PointId; readonly terminal: string; readonly rank: number };

/** Where a clamp goes first on one metal: a neutral's own point, the conductor itself, then what has fewest points. */
const rankOf = (part: Part, terminal: string): number => {
  const points = bareTerminals(part).length;
  return points + (terminal === reference ? 0 : part.end !== null ? 10 : 20);
};

/** One bare point in reach for each net: elsewhere on the same metal is the same clamp. */
function placesInReach(world: World, stick: string | null): readonly Place[] {
  const byNet = new Map<string, Place>();
  for (const part of world.parts) {
    for (const terminal of [...bareTerminals(part)].sort()) {
      const net = part.nets[terminal];
      const place = { point: `${part.id}/${terminal}`, terminal, rank: rankOf(part, terminal) };
      if (net === undefined || beyondReach(world, place.point, stick) !== null) continue;
      const known = byNet.get(net);
      if (!known || place.rank < known.rank) byNet.set(net, place);
    }
  }
  return [...byNet.values()];
}

/** Terminal to which grounds are tied. */
const reference = 'neutral';

/** What is joined to the neutral, or should be, in one joint of three or more: bridged along with a ground. */
const besideNeutral = (world: World, stick: string | null): readonly PointId[] =>
  world.parts.flatMap((part) => {
    const terminals = bareTerminals(part);
    if (terminals.length < 3 || !terminals.includes(reference)) return [];
    return terminals
      .filter((terminal) => terminal !== reference)
      .sort()
      .map((terminal) => `${part.id}/${terminal}`)
      .filter((point) => beyondReach(world, point, stick) === null);
  });

/**
 * Pairs with the neutral in both orders, and with a joint beside the neutral bridged on the way; a set made for certain
 * terminals goes on those.
 */
function clampings(world: World, tool: Tool, stick: string | null): readonly (readonly PointId[])[] {
  const { fits, clamps = 0 } = toolKind(tool.kind);
  if (fits) {
    return world.parts
      .filter((part) => fits.every((terminal) => part.nets[terminal] !== undefined))
      .map((part) => fits.map((terminal) => `${part.id}/${terminal}`));
  }
  const places = placesInReach(world, stick);
  const others = places.filter(({ terminal }) => terminal !== reference);
  const beside = clamps > 2 ? besideNeutral(world, stick) : [];
  return places
    .filter(({ terminal }) => terminal === reference)
    .flatMap(({ point }) =>
      others.flatMap((other) => [
        [point, other.point],
        [other.point, point],
        ...beside.filter((bridged) => bridged !== other.point).map((bridged) => [point, bridged, other.point]),
      ]),
    );
}

/** Sets alike are offered once. */
function offersOf(world: World, tool: Tool): readonly Offer<'ground'>[] {
  const free = clampSetsOf(world).filter(({ id }) => !world.jumpers.some((jumper) => jumper.tool === id));
  if (free.find(({ kind }) => kind === tool.kind)?.id !== tool.id) return [];
  return [...sticksOf(world), null].flatMap((stick) =>
    clampings(world, tool, stick?.id ?? null).map((points) => ({
      act: { act: 'ground', tool: tool.id, points, stick: stick?.id ?? null },
      label: `${tool.name}: on ${points.map((point) => pointWords(world, point)).join(', then on ')}, ${stick ? `with ${stick.name}` : 'by hand'}`,
      by: stick ? 'stick' : 'hands',
      about: tool.id,
    })),
  );
}
