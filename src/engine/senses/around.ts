/**
 * What is there beside the parts: weather, ground, road, people. Looked round for, it is said as it is; faults of site and
 * people show their signs to whoever stands near enough. Nothing hides a person from view here (simplification).
 */
import { faultKind } from '../catalogue/faults.ts';
import { distance, type Vec3 } from '../math/vec3.ts';
import { format } from '../units/formatQuantity.ts';
import { personById, standById } from '../world/edit.ts';
import type { LaidFault, Person, World } from '../world/types.ts';
import type { Look, Sign } from './types.ts';

/** The site as something that can be looked at. */
export const SITE = 'site';

/** How far off one still makes out what somebody does (estimate). */
const personM = 80;
/** Made out when looked for, not unasked (senses/types.ts). */
const lookedFor = 2;

const feetOf = (world: World, stand: string | null): Vec3 | null =>
  stand === null ? null : (standById(world, stand)?.feet ?? null);

const inSight = (world: World, person: Person, stand: string): boolean => {
  const [from, to] = [feetOf(world, stand), feetOf(world, person.at)];
  return from !== null && to !== null && distance(from, to) <= Math.min(personM, world.site.visibilityM);
};

const signsOf = (part: string, faults: readonly LaidFault[], at: Vec3): readonly Sign[] =>
  faults.flatMap((fault) =>
    faultKind(fault.kind).signs.flatMap((kind): Sign[] =>
      kind.sense === 'see' || kind.sense === 'hear'
        ? [
            {
              id: `${fault.id}/${kind.id}`,
              fault: fault.id,
              part,
              sense: kind.sense,
              perceived: true,
              margin: lookedFor,
              why: null,
              words: kind.words,
              at,
            },
          ]
        : [],
    ),
  );

/** Signs of faults of the site and of people in sight, from a stand. */
export function aroundSigns(world: World, stand: string): readonly Sign[] {
  const here = feetOf(world, stand);
  if (here === null) return [];
  return [
    ...signsOf(SITE, world.site.faults, here),
    ...world.people.flatMap((person) =>
      person.faults.length > 0 && inSight(world, person, stand)
        ? signsOf(person.id, person.faults, feetOf(world, person.at) ?? here)
        : [],
    ),
  ];
}

const falling = {
  none: 'nothing falls',
  drizzle: 'drizzle',
  rain: 'rain',
  snow: 'snow',
  ice: 'rain that freezes where it falls',
} as const;

const passing = {
  none: 'nothing passes',
  light: 'a car now and then',
  heavy: 'one car after the other',
} as const;

const wetness = (wet: number): string => (wet >= 0.5 ? 'wet' : wet > 0 ? 'damp' : 'dry');

const siteLines = ({ site, clock }: World): readonly string[] => [
  `sky: ${falling[site.precipitation]}, ${thunderWords(site.thunderAt, clock.minute)}`,
  `wind: ${format(site.windMs, 'speed', 'us', 2)} across the line`,
  `ground: ${site.flooded ? 'under water' : wetness(site.wetness)}`,
  `road: ${passing[site.traffic]}`,
];

const thunderWords = (at: number | null, minute: number): string =>
  at === null ? 'no thunder' : `thunder ${minute - at === 0 ? 'now' : `${minute - at} minutes ago`}`;

const taskWords = { watch: 'watches the work', flag: 'flags the traffic' } as const;

/** A look at the site or at somebody; null where there is nothing of the kind, or out of sight. */
export function lookRound(world: World, id: string, stand: string): Look | null {
  const here = feetOf(world, stand);
  if (here === null) return null;
  const seen = aroundSigns(world, stand).filter((sign) => sign.part === id);
  const look = (name: string, lines: readonly string[], at: Vec3): Look => ({
    part: id,
    name,
    lines: [...lines, ...seen.map(({ words }) => words)],
    seen: seen.map((sign) => sign.id),
    visible: true,
    distance: distance(here, at),
  });
  if (id === SITE) return look('weather and site', siteLines(world), here);
  const person = personById(world, id);
  if (!person || !inSight(world, person, stand)) return null;
  const place = standById(world, person.at ?? '')?.name ?? '';
  const task = person.task === null ? [] : [taskWords[person.task]];
  return look(person.name, [place, ...task], feetOf(world, person.at) ?? here);
}
