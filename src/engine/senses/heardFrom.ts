/**
 * What is heard at a stand: level by distance against the background, which a running truck engine and every other steady sound
 * raise, as far as the spread of masking reaches from its strongest frequency to the other's (standards/masking.ts). The buzz of
 * a leak follows the solved leakage current, 20 dB a factor of ten (an assumption: no published level was
 * found). Nothing but distance weakens a sound.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { atan2, log10, pow } from '../math/elementary.ts';
import { add, distance, sub, type Vec3 } from '../math/vec3.ts';
import { heardMargin, isHeard, levelAt, sumLevels, windBackground } from '../standards/hearing.ts';
import { maskAt } from '../standards/masking.ts';
import { standById } from '../world/edit.ts';
import { placeOfFeature } from '../world/featurePlace.ts';
import type { Part, World } from '../world/types.ts';
import type { Heard, Sign } from './types.ts';

/** Leakage current at which a buzz has the level that its sign states. */
const BUZZ_AMPERES = 0.01;
/** Below this a leak is silent (assumption). */
const SILENT_AMPERES = 0.001;
/** Diesel at idle, dB(A) at 7 m (from memory). */
const TRUCK = { level: 66, atM: 7 };

interface Source {
  readonly id: string;
  readonly sound: string;
  readonly level: number;
  readonly atM: number;
  readonly at: Vec3;
  readonly caption: string;
  readonly fault: string | null;
  readonly part: string | null;
}

/** Wind from which wires sing, m/s, and cars on a road beside one, dB(A): estimates. */
const WIRES = 4;
const ROAD = { light: 52, heavy: 62 } as const;

/** What falls, of sites that say so. */
interface Falling {
  readonly precipitation?: string;
}

const earAt = (world: World, stand: string): Vec3 => {
  const found = standById(world, stand);
  if (found === null) throw new Error(`no stand ${stand}`);
  return add(found.feet, [0, 0, found.eye]);
};

/** A sound of a part; where it follows a leakage, the leak's name. */
interface Sounding extends Source {
  readonly leak: string | null;
}

const soundingsOf = (part: Part): readonly Sounding[] => {
  const { sound, features } = componentKind(part.kind);
  const own = sound?.(part) ?? null;
  const at = features[0] ? placeOfFeature(part, features[0]) : part.at;
  const faults = part.faults.flatMap((fault) => {
    const { signs, leaks } = faultKind(fault.kind);
    return signs.flatMap((kind): Sounding[] => {
      if (kind.sense !== 'hear' || kind.sound === undefined) return [];
      const follows = kind.sound.follows === 'leakage';
      const leak = follows ? (leaks[0]?.name ?? null) : null;
      if (follows && leak === null) return [];
      return [{ ...kind.sound, id: `${fault.id}/${kind.id}`, at, fault: fault.id, part: part.id, leak }];
    });
  });
  return own === null ? faults : [{ ...own, id: part.id, at, fault: null, part: part.id, leak: null }, ...faults];
};

// A part is never changed in place, so its sounds may be kept with it.
const soundings = new WeakMap<Part, readonly Sounding[]>();

const soundingsOn = (part: Part): readonly Sounding[] => {
  const found = soundings.get(part) ?? soundingsOf(part);
  soundings.set(part, found);
  return found;
};

const findSources = (world: World): readonly Source[] =>
  world.parts.flatMap((part) =>
    soundingsOn(part).flatMap((sounding): readonly Source[] => {
      const { leak, ...source } = sounding;
      if (leak === null) return [source];
      const amperes = solveCircuit(world).branchCurrent(part.id, leak);
      return amperes < SILENT_AMPERES ? [] : [{ ...source, level: source.level + 20 * log10(amperes / BUZZ_AMPERES) }];
    }),
  );

interface Kept {
  readonly jumpers: World['jumpers'];
  readonly resistivity: number;
  readonly sources: readonly Source[];
}

// A list of parts is never changed in place; with jumpers and soil it is all that sources follow from.
const kept = new WeakMap<World['parts'], Kept>();

const sourcesOf = (world: World): readonly Source[] => {
  const { parts, jumpers, site } = world;
  const known = kept.get(parts);
  if (known?.jumpers === jumpers && known.resistivity === site.resistivity) return known.sources;
  const sources = findSources(world);
  kept.set(parts, { jumpers, resistivity: site.resistivity, sources });
  return sources;
};

const truckAt = (world: World, ear: Vec3): number | null =>
  world.truck.engine && world.truck.place !== 'arriving'
    ? levelAt(TRUCK.level, TRUCK.atM, Math.max(1, distance(world.truck.at, ear)))
    : null;

/** Level of all that is not listened to, dB(A), at a stand. */
export const backgroundAt = (world: World, stand: string): number => {
  const truck = truckAt(world, earAt(world, stand));
  return sumLevels(truck === null ? [world.site.backgroundDb] : [world.site.backgroundDb, truck]);
};

/** Level of each source at an ear, dB(A). */
const levelsOf = (sources: readonly Source[], ear: Vec3): readonly number[] =>
  sources.map(({ level, atM, at }) => levelAt(level, atM, Math.max(1, distance(at, ear))));

/** Strongest frequency of each steady sound, Hz: estimates, from what it is made of. */
const strongest: Readonly<Record<string, number>> = {
  bees: 240,
  dog: 600,
  generator: 250,
  'insulator-buzz': 3000,
  'transformer-hum': 120,
};
const pitchOf = ({ sound }: Source): number => strongest[sound] ?? 1000;

/** What a source has against it: the background, and all other sources as far as they mask its frequency. */
const against = (background: number, sources: readonly Source[], levels: readonly number[], own: number): number => {
  const mine = sources[own];
  if (mine === undefined) return background;
  const masks = sources.flatMap((other, i) =>
    i === own ? [] : [maskAt(levels[i] ?? 0, pitchOf(other), pitchOf(mine))],
  );
  return sumLevels([background, ...masks]);
};

const directionTo = (ear: Vec3, at: Vec3): number => {
  const [x, y] = sub(at, ear);
  return atan2(y, x);
};

const ambient = (world: World): readonly Heard[] => {
  const all = (id: string, level: number, caption: string): Heard => ({
    id,
    sound: id,
    level,
    azimuth: null,
    at: null,
    caption,
    fault: null,
  });
  const { backgroundDb, light, traffic, wetness, windMs } = world.site;
  const falls = (world.site as Falling).precipitation ?? 'none';
  const wet = falls === 'rain' || falls === 'drizzle';
  return [
    // Rain is what the background of a wet site is made of.
    ...(falls === 'rain' ? [all('rain', backgroundDb, 'rain falling all round')] : []),
    ...(falls === 'drizzle' ? [all('drizzle', backgroundDb, 'fine drops falling all round')] : []),
    ...(windMs >= WIRES ? [all('wind-wires', windBackground(windMs), 'wind in the wires')] : []),
    ...(traffic === 'none' ? [] : [all('traffic', ROAD[traffic], 'cars on the road, now and then')]),
    ...(!wet && (light === 'dawn' || light === 'day') ? [all('birds', 42, 'birds, now and then')] : []),
    ...(!wet && wetness > 0.5 ? [all('fog-drip', 32, 'drops falling from wires and leaves')] : []),
  ].filter(({ level }) => isHeard(level, backgroundDb));
};

const listen = (world: World, stand: string): readonly Heard[] => {
  const ear = earAt(world, stand);
  const background = backgroundAt(world, stand);
  const truck = truckAt(world, ear);
  const sources = sourcesOf(world);
  const levels = levelsOf(sources, ear);
  const heard = sources
    .map(
      (source, i): Heard => ({
        id: source.id,
        sound: source.sound,
        level: levels[i] ?? 0,
        azimuth: directionTo(ear, source.at),
        at: source.at,
        caption: source.caption,
        fault: source.fault,
      }),
    )
    .filter(({ level }, i) => isHeard(level, against(background, sources, levels, i)));
  const engine: Heard[] =
    truck === null
      ? []
      : [
          {
            id: 'truck',
            sound: 'truck-engine',
            level: truck,
            azimuth: directionTo(ear, world.truck.at),
            at: world.truck.at,
            caption: 'the engine of the truck, idling',
            fault: null,
          },
        ];
  return [...engine, ...heard, ...(truck === null ? ambient(world) : [])].sort(
    (a, b) => b.level - a.level || (a.id < b.id ? -1 : 1),
  );
};

interface Listened {
  readonly site: World['site'];
  readonly truck: World['truck'];
  readonly stands: World['stands'];
  readonly heard: readonly Heard[];
}

// One list of sources is listened to again and again, before an act and after it.
const listened = new WeakMap<readonly Source[], Map<string, Listened>>();

/** Everything heard at a stand, loudest first, ordinary sounds too. */
export const heardFrom = (world: World, stand: string): readonly Heard[] => {
  const { site, truck, stands } = world;
  const sources = sourcesOf(world);
  const places = listened.get(sources) ?? new Map<string, Listened>();
  listened.set(sources, places);
  const known = places.get(stand);
  if (known?.site === site && known.truck === truck && known.stands === stands) return known.heard;
  const heard = listen(world, stand);
  places.set(stand, { site, truck, stands, heard });
  return heard;
};

/** The same as signs, of faults only, the masked ones too; margin: sound pressure over the least that is heard. */
export const heardSigns = (world: World, stand: string): readonly Sign[] => {
  const ear = earAt(world, stand);
  const background = backgroundAt(world, stand);
  const sources = sourcesOf(world);
  const levels = levelsOf(sources, ear);
  return sources.flatMap((source, i): Sign[] => {
    if (source.fault === null || source.part === null) return [];
    const level = levels[i] ?? 0;
    const masking = against(background, sources, levels, i);
    const perceived = isHeard(level, masking);
    return [
      {
        id: source.id,
        fault: source.fault,
        part: source.part,
        sense: 'hear',
        perceived,
        margin: pow(10, (level - masking - heardMargin) / 20),
        why: perceived ? null : 'masked',
        words: source.caption,
        at: source.at,
      },
    ];
  });
};
