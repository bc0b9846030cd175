/** What comes and goes with people: truck, chocks, cones, barrier, grounds, covers, tags, and the people themselves. */
import { pointAt, standById } from '../../engine/world/edit.ts';
import type { Part, Person, World } from '../../engine/world/types.ts';
import type { Point } from '../hardware/types.ts';
import { outwardOf, shifted } from './shared.ts';
import type { Piece } from './types.ts';

/** A piece with the id under which it is pointed at; null: part of the scenery. */
export interface PutOut {
  readonly id: string | null;
  readonly piece: Piece;
}

const aloftIn = (world: World): Person | undefined =>
  world.people.find((p) => p.aloftBy === 'bucket' && p.at !== null && standById(world, p.at)?.aloft !== null);

/** The truck where it is parked; drawn a length back if that is just where the trainee stands. */
const truckAt = (world: World, beside: string): Point => {
  const { at } = world.truck;
  const feet = standById(world, beside)?.feet;
  if (!feet || Math.abs(feet[0] - at[0]) > 4.6 || Math.abs(feet[1] - at[1]) > 1.9) return at;
  return [feet[0] - 8.5, at[1], at[2]];
};

/** How far along the line a bucket is kept off tanks and brackets: its occupant leans over its lip. */
const OFF = 0.28;

/** The boom's tip, for a bucket whose occupant has the feet there. */
const tipAt = (feet: Point, pole: Point): Point => shifted(feet, OFF * Math.sign(feet[0] - pole[0] || -1), -0.38, 0.87);

const truckOf = (world: World, beside: string): readonly PutOut[] => {
  const { place } = world.truck;
  const at = truckAt(world, beside);
  const up = aloftIn(world);
  const stand = up?.at ? standById(world, up.at) : null;
  const pole = world.parts.find(({ id }) => id === `${stand?.aloft?.pole}.pole`);
  const goal = stand && pole ? shifted(tipAt(stand.feet, pole.at), -at[0], -at[1], -at[2]) : null;
  const state = goal ? 'raised' : place === 'under-line' ? 'set-up' : 'stowed';
  return [{ id: 'truck', piece: { spec: { kind: 'truck', side: 0, state, points: goal ? [goal] : [] }, at } }];
};

const guardsOf = (world: World, beside: string): readonly PutOut[] => {
  const [x, y] = truckAt(world, beside);
  const { chocks, cones, keepOut } = world.guards;
  const scenery = (spec: Piece['spec'], at: Point): PutOut => ({ id: null, piece: { spec, at } });
  const job = world.parts.find(({ id, pole }) => pole !== null && world.given.job.restores.includes(id))?.pole ?? null;
  const foot = world.parts.find(({ id }) => id === `${job}.pole`)?.at ?? [0, 0, 0];
  const ring: Point[] = [-2.6, -1.2, 0.4, 1.9, 3.4].map((a) => [
    foot[0] + 4.6 * Math.cos(a),
    foot[1] + 4.6 * Math.sin(a),
    0,
  ]);
  return [
    ...(chocks
      ? [-1.4, -2.1].flatMap((dx, i) =>
          [-1.03, 1.03].map((dy) =>
            scenery({ kind: 'wheel-chock', side: i === 0 ? Math.PI : 0 }, [
              x + dx + (i === 0 ? 0.28 : -0.28),
              y + dy,
              0,
            ]),
          ),
        )
      : []),
    ...(cones
      ? (
          [
            [-9, -2.2],
            [-6.2, -1.9],
            [-3.2, -1.9],
            [0, -1.9],
            [3.2, -1.9],
            [6.4, -1.7],
          ] as const
        ).map(([dx, dy]) => scenery({ kind: 'cone' }, [x + dx, y + dy, 0]))
      : []),
    ...(cones ? [scenery({ kind: 'sign', side: Math.PI }, [x - 14, y - 1.4, 0])] : []),
    ...(keepOut
      ? [
          ...ring.map((at) => scenery({ kind: 'barrier-post' }, at)),
          scenery(
            { kind: 'barrier-tape', points: [...ring, ring[0] as Point].map((p) => shifted(p, 0, 0, 0.95)) },
            [0, 0, 0],
          ),
        ]
      : []),
  ];
};

/** How people of each role are built. */
const builds: Readonly<Record<string, Omit<Piece['spec'], 'side'>>> = {
  second: { kind: 'person', variant: 'crew' },
  foreman: { kind: 'person', variant: 'crew' },
  flagger: { kind: 'person', variant: 'crew' },
  customer: { kind: 'person', variant: 'public' },
  child: { kind: 'person', variant: 'public', size: { height: 1.15 } },
  dog: { kind: 'dog', state: 'standing' },
};

/** People stand a step beside the standing point, so that nobody is inside another or inside the camera. */
const peopleOf = (world: World, beside: string): readonly PutOut[] =>
  world.people.flatMap((person, i): readonly PutOut[] => {
    if (person.role === 'trainee' || person.at === null) return [];
    const stand = standById(world, person.at);
    if (stand === null || (stand.aloft !== null && person.at === beside)) return [];
    const home = world.parts.find(({ id }) => id === `${person.premises}.house`);
    const mast = world.parts.find(({ id }) => id === `${stand.near}.pole` || id === `${stand.near}.house`);
    const look = mast ? Math.atan2(mast.at[1] - stand.feet[1], mast.at[0] - stand.feet[0]) : 0;
    const side = home ? Math.atan2(stand.feet[1] - home.at[1], stand.feet[0] - home.at[0]) - 0.35 : look;
    const step = stand.aloft !== null ? 0 : home ? 3.1 : 1.1 + 0.4 * i;
    const at: Point = [
      stand.feet[0] + step * Math.cos(look + (home ? -0.95 : -1.3)),
      stand.feet[1] + step * Math.sin(look + (home ? -0.95 : -1.3)),
      stand.feet[2],
    ];
    const build = builds[person.role] ?? builds.customer;
    return [
      {
        id: person.id,
        piece: {
          spec: {
            ...build,
            ...(build?.kind === 'person' ? { state: stand.aloft ? 'reaching' : 'standing' } : {}),
            side,
          } as Piece['spec'],
          at,
        },
      },
    ];
  });

const jumpersOf = (world: World): readonly PutOut[] =>
  world.jumpers.flatMap((jumper) => {
    const at = jumper.points.map((p) => pointAt(world, p)).filter((p) => p !== null);
    return at.slice(1).flatMap((to, i): readonly PutOut[] => {
      const from = at[i];
      if (!from) return [];
      const slack: Point = [
        (from[0] + to[0]) / 2 + 0.12,
        (from[1] + to[1]) / 2 - 0.22,
        Math.min(from[2], to[2]) - 0.25,
      ];
      return [{ id: jumper.tool, piece: { spec: { kind: 'ground-set', points: [from, slack, to] }, at: [0, 0, 0] } }];
    });
  });

const tagsOf = (part: Part, world: World): readonly PutOut[] =>
  part.tags.map((_tag, i) => {
    const [first] = Object.keys(part.nets);
    const at = (first && pointAt(world, `${part.id}/${first}`)) || part.at;
    return {
      id: null,
      piece: {
        spec: {
          kind: 'tag',
          variant: 'warning',
          side: outwardOf(part),
          text: 'HOLD',
          size: { width: 0.09, height: 0.15 },
        },
        at: [at[0], at[1], at[2] - 0.16 - 0.17 * i],
      },
    };
  });

/** Orange rubber laid over a conductor or an insulator. */
const coversOf = (world: World): readonly PutOut[] =>
  world.covers.flatMap(({ part: id }): readonly PutOut[] => {
    const part = world.parts.find((p) => p.id === id);
    if (!part) return [];
    const tie = world.parts.find((p) => p.id === `${part.pole}.tie`);
    const azimuth = tie?.azimuth ?? 0;
    const middle: Point = part.end
      ? [part.at[0] + 1.2, part.at[1], part.at[2]]
      : [part.at[0], part.at[1], (tie ?? part).at[2]];
    const along = (by: number): Point => [
      middle[0] + by * Math.cos(azimuth),
      middle[1] + by * Math.sin(azimuth),
      middle[2] + 0.005,
    ];
    return [{ id, piece: { spec: { kind: 'line-cover', points: [along(-0.9), along(0.9)] }, at: [0, 0, 0] } }];
  });

/** Everything put out in this World, in order; `beside` is the trainee's stand. */
export const putOutIn = (world: World, beside: string): readonly PutOut[] => [
  ...truckOf(world, beside),
  ...guardsOf(world, beside),
  ...peopleOf(world, beside),
  ...jumpersOf(world),
  ...world.parts.flatMap((part) => tagsOf(part, world)),
  ...coversOf(world),
];
