/** In which scenes a habit can show at all, told by the causes that lie there and from where their signs can be made out. */
import { act } from '../acts/act.ts';
import { shoulderHeight, step as stepAside } from '../acts/presence.ts';
import type { Act } from '../acts/types.ts';
import { faultKind } from '../catalogue/faults.ts';
import { toolKind } from '../catalogue/tools.ts';
import { hazardsIn } from '../hazards/hazardsIn.ts';
import { add, distance } from '../math/vec3.ts';
import { type Laid, laidIn, perceivableFrom } from '../score/known.ts';
import { signsFrom } from '../senses/signsFrom.ts';
import { aids } from '../senses/types.ts';
import { pointAt, standById, trainee } from '../world/edit.ts';
import type { World } from '../world/types.ts';
import type { Where } from './types.ts';

const known = new WeakMap<World, readonly Where[]>();

/** All that hold of a scene. */
export const whereIn = (world: World): readonly Where[] => {
  const have = known.get(world) ?? derive(world);
  known.set(world, have);
  return have;
};

/** Ways to tell that put hands, hammer or stick on something: a careful one may rightly stay away. */
const needsHands: readonly string[] = ['measure', 'sound', 'prod'];

const hasLift = (world: World): boolean => world.tools.some(({ kind }) => toolKind(kind).lifts !== undefined);

/** Whether a hand gets at a point from some stand on the ground. */
const isFromGround = (world: World, point: string | null): boolean => {
  const at = point === null ? null : pointAt(world, point);
  if (at === null) return false;
  return world.stands.some(
    ({ feet, reachM, aloft }) =>
      aloft === null && distance(add(feet, [0, 0, shoulderHeight]), at) <= reachM + stepAside,
  );
};

const arriving: readonly Act[] = [{ act: 'acknowledge' }, { act: 'park', at: 'clear' }];

const derive = (world: World): readonly Where[] => {
  const behind = new Set(hazardsIn(world).flatMap(({ causes }) => causes));
  const causes = laidIn(world).filter(({ fault }) => behind.has(fault.id));
  const arrived = arriving.reduce((now, each) => act(now, each).world, world);
  const first = trainee(arrived).at ?? '';
  const seen = new Set(
    (first === '' ? [] : aids).flatMap((aid) =>
      signsFrom(arrived, first, aid)
        .filter(({ perceived }) => perceived)
        .map(({ fault }) => fault),
    ),
  );
  const vantages = perceivableFrom(world);
  const from = (laid: Laid): readonly string[] =>
    vantages(laid)
      .filter(({ aid }) => !needsHands.includes(aid))
      .map(({ stand }) => stand);
  const told = causes.filter((laid) => from(laid).length > 0);
  // What a tool's tag or a voice on the phone tells is known without a step aside.
  const isElsewhere = (stand: string): boolean => stand !== first && standById(world, stand) !== null;
  const isHidden = told.some((laid) => !seen.has(laid.fault.id) && from(laid).every(isElsewhere));
  const isFatal = causes.some(({ fault }) => faultKind(fault.kind).severity === 'fatal');
  const deadly = hazardsIn(world).filter((hazard) => hazard.potentiallyFatal && hazard.causes.length > 0);
  const faulty = new Set(causes.map(({ on }) => world.parts.find(({ id }) => id === on)?.pole ?? null));
  const isFuseOut = world.parts.some(({ pole, state }) => state.link === 'blown' && pole !== null && !faulty.has(pole));
  const inReach = deadly.length > 0 && (hasLift(world) || deadly.some(({ point }) => isFromGround(world, point)));
  return [
    'anywhere',
    ...(inReach ? (['a-fatal-cause-in-reach'] as const) : []),
    ...(isFatal ? (['a-fatal-cause'] as const) : []),
    ...(causes.length > 0 ? (['a-cause'] as const) : []),
    ...(told.length > 1 ? (['several-causes'] as const) : []),
    ...(isHidden ? (['a-hidden-cause'] as const) : []),
    ...(isFuseOut ? (['a-fuse-to-put-back'] as const) : []),
  ];
};
