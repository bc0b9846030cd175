/**
 * What a crew can do beforehand against what stands in the way of an act: dress, check and wipe, wait for the second
 * worker, brief, check the pole, open and tag, take a clearance, hold a conductor, test, ground, cover. The list comes
 * from what the acts' own files offer at every stand; nothing here knows which measure helps against what.
 */

import { refusalOf } from '../acts/act.ts';
import { dispatcherMinutes, isolatingDevices } from '../acts/clearance.ts';
import { kinds } from '../acts/kinds.ts';
import { away } from '../acts/send.ts';
import { dogsOut, shutIn } from '../acts/talk.ts';
import type { Act, ActName } from '../acts/types.ts';
import { componentKind } from '../catalogue/components.ts';
import { briefingTopics } from '../catalogue/controls.ts';
import { toolKind } from '../catalogue/tools.ts';
import type { ToolKind } from '../catalogue/types.ts';
import { branchesOf, netAt } from '../circuit/elementsOf.ts';
import { crewLosses } from '../hazards/crew.ts';
import { misnamed, precondition } from '../hazards/readiness.ts';
import { sectionOf } from '../hazards/section.ts';
import { findPart, toolById } from '../world/edit.ts';
import type { PointId, Tool, World } from '../world/types.ts';
import { placedAt, standsOf } from './places.ts';
import { wayToService } from './toService.ts';

/** Acts that belong together, in their order. */
export interface Measure {
  readonly acts: readonly Act[];
  /** Where alone it serves; absent: from wherever it is possible. */
  readonly at?: string;
}

const offersOf = (world: World, name: ActName): readonly Act[] => kinds[name].offers(world).map(({ act }) => act);

/** Of tools that serve alike, one that is in test and whole if there is one. */
export function bestOf(world: World, serves: (kind: ToolKind) => boolean): Tool | null {
  const able = world.tools.filter((tool) => serves(toolKind(tool.kind)));
  const good = able.find(
    ({ id }) => precondition(world, 'tool-in-test', { tool: id }) && precondition(world, 'tool-sound', { tool: id }),
  );
  return good ?? able[0] ?? null;
}

/** The stick that is taken, where there is one. */
export const stickOf = (world: World): string | null => bestOf(world, ({ barrier }) => barrier === 'stick')?.id ?? null;

const withBest = (world: World, act: Act): boolean => {
  if (!('stick' in act) || act.stick === null) return true;
  return act.stick === stickOf(world);
};

const wearing = (world: World): readonly Measure[] =>
  (['hands', 'face', 'body'] as const).flatMap((on) => {
    const tool = bestOf(world, ({ wornOn }) => wornOn === on);
    return tool === null ? [] : [{ acts: [{ act: 'wear', tool: tool.id, on: true }] }];
  });

const checking = (world: World): readonly Measure[] =>
  (['wipe', 'air-test'] as const).flatMap((check) => {
    const tool = bestOf(world, ({ checks, barrier }) => barrier !== undefined && checks.includes(check));
    return tool === null ? [] : [{ acts: [{ act: 'check-tool', tool: tool.id, check }] }];
  });

/** Longest wait in one act. */
const LONGEST = 60;

/** Waiting until the second worker is here. */
function waiting(world: World): readonly Measure[] {
  const second = world.people.find(({ role }) => role === 'second');
  if (second === undefined || second.at !== null || second.arrivesAt === null) return [];
  const minutes = second.arrivesAt - world.clock.minute;
  return minutes < 1 || minutes > LONGEST ? [] : [{ acts: [{ act: 'wait', minutes }] }];
}

/** The numbers matched with a dispatcher who has others in mind, as whoever reads them off the pole would. */
const matching = (world: World): readonly Measure[] =>
  misnamed(world) ? [{ acts: [{ act: 'tell', who: 'dispatcher', what: 'correct-number' }] }] : [];

/** Reclosing blocked where it was left on against the order. */
const blocking = (world: World): readonly Measure[] =>
  crewLosses(world).some(({ failed }) => failed.includes('reclosing-blocked'))
    ? [{ acts: [{ act: 'tell', who: 'dispatcher', what: 'block-reclosing' }] }]
    : [];

/** Asking about sets of their own; looking at what nobody tells of. */
const knowing = (world: World): readonly Measure[] =>
  world.parts
    .filter((part) => part.premises !== null && branchesOf(part).some(({ type }) => type === 'source'))
    .map((part) => {
      const owner = world.people.find(
        ({ premises, says }) => premises === part.premises && says.generator !== undefined,
      );
      const act: Act =
        owner === undefined
          ? { act: 'look', part: part.id, aid: 'eyes' }
          : { act: 'ask', who: owner.id, about: 'generator' };
      return { acts: [act] };
    });

/** Guarding, sending away people of the public, having a dog shut in. */
const guarding = (world: World): readonly Measure[] => [
  ...offersOf(world, 'guard').map((act) => ({ acts: [act] })),
  ...offersOf(world, 'send').flatMap((act) => (act.act === 'send' && act.to === away ? [{ acts: [act] }] : [])),
  ...(dogsOut(world) ? offersOf(world, 'tell') : []).flatMap((act) =>
    act.act === 'tell' && act.what === shutIn ? [{ acts: [act] }] : [],
  ),
];

/** Tasks for the crew: one at a time, so each shows only when something stands in the way. */
export const assignments = (world: World): readonly Measure[] =>
  offersOf(world, 'assign').flatMap((act) => (act.act === 'assign' && act.task !== null ? [{ acts: [act] }] : []));

const poles = (world: World): readonly Measure[] =>
  offersOf(world, 'sound').flatMap((act) =>
    act.act === 'sound' ? [{ acts: [{ act: 'look', part: `${act.pole}.pole`, aid: 'eyes' }, act] }] : [],
  );

/** Whether an operation takes something out of service: it makes no contact, and leads away from the ordinary state or breaks one. */
function takesOut(world: World, part: string, id: string): boolean {
  const at = findPart(world, part);
  const kind = at && componentKind(at.kind);
  const operation = kind?.operations.find((each) => each.id === id);
  if (!kind || !operation || operation.makes !== undefined) return false;
  const away = Object.entries(operation.to).every(([name, value]) => kind.states[name]?.[0] !== value);
  return away || operation.breaks !== undefined;
}

const takingOut = (world: World): readonly Measure[] =>
  [...offersOf(world, 'owner'), ...offersOf(world, 'operate')]
    .filter((act) => (act.act === 'operate' || act.act === 'owner') && takesOut(world, act.part, act.operation))
    .filter((act) => withBest(world, act))
    .map((act) => ({ acts: [act] }));

/** Dead devices of the line brought into service, so that what lies on both their sides is one metal and takes one ground. */
export const joinings = (world: World): readonly Measure[] =>
  world.parts.flatMap((part) => {
    const acts = part.pole === null ? [] : wayToService(part, stickOf(world));
    return acts.length === 0 ? [] : [{ acts }];
  });

const tagging = (world: World): readonly Measure[] =>
  offersOf(world, 'tag').flatMap((act) => (act.act === 'tag' && act.on ? [{ acts: [act] }] : []));

const clearing = (world: World): readonly Measure[] =>
  isolatingDevices(world).map(({ id }) => ({
    acts: [
      { act: 'clearance', step: 'request', device: id },
      { act: 'wait', minutes: dispatcherMinutes },
    ],
  }));

/** The arm on each conductor at each pole: where it is needed shows when something stands in the way. */
export const supportings = (world: World): readonly Measure[] =>
  standsOf(world).flatMap((stand) => {
    const there = placedAt(world, stand);
    return offersOf(there, 'support').flatMap((act) =>
      act.act === 'support' && act.on && refusalOf(there, act) === null ? [{ acts: [act], at: stand.id }] : [],
    );
  });

/** Measures that never stand in each other's way, in the order in which a crew would take them. */
export const plainMeasures = (world: World): readonly Measure[] => [
  ...matching(world),
  ...blocking(world),
  ...knowing(world),
  ...wearing(world),
  ...checking(world),
  ...waiting(world),
  ...guarding(world),
  { acts: [{ act: 'brief', topics: briefingTopics, rescue: true }] },
  ...poles(world),
  ...takingOut(world),
  ...tagging(world),
  ...clearing(world),
];

const unique = (measures: readonly Measure[]): readonly Measure[] => [
  ...new Map(measures.map((measure) => [JSON.stringify(measure.acts), measure])).values(),
];

/** Tests of the metal of a point by a proved tester, wherever it can be got at. */
export function testsOf(world: World, point: PointId): readonly Measure[] {
  const section = sectionOf(world, point);
  return unique(
    offersOf(world, 'test').flatMap((act): readonly Measure[] => {
      if (act.act !== 'test' || !withBest(world, act) || !section.has(netAt(world, act.point))) return [];
      const tool = toolById(world, act.tool);
      const serves = tool && toolKind(tool.kind).testsOf;
      if (!serves || bestOf(world, ({ testsOf: of }) => of === serves)?.id !== act.tool) return [];
      const proof: Act = { act: 'check-tool', tool: act.tool, check: 'self-test' };
      return [{ acts: [proof, act, proof] }];
    }),
  );
}

/** Sets of grounds, bonds and shorts as they are offered at each stand; the neutral goes first. */
export const groundings = (world: World): readonly Measure[] =>
  unique(
    standsOf(world).flatMap((stand) =>
      offersOf(placedAt(world, stand), 'ground').flatMap((act) => {
        if (act.act !== 'ground' || !withBest(world, act)) return [];
        const bySet = toolById(world, act.tool);
        const fits = bySet !== null && toolKind(bySet.kind).fits !== undefined;
        return (act.stick === null) === fits ? [{ acts: [act] }] : [];
      }),
    ),
  );

export const coverings = (world: World): readonly Measure[] =>
  offersOf(world, 'cover').flatMap((act) => (act.act === 'cover' && act.on ? [{ acts: [act] }] : []));
