/**
 * What is heard at a stand: level by distance against the background, which a running truck engine raises. The buzz of a leak
 * follows the solved leakage current, 20 dB a factor of ten (an assumption: no published level was found). Left out: steady sounds
 * other than the truck do not mask each other, and nothing but distance weakens them.
 */
import { componentKind } from '../catalogue/components.ts';
import { faultKind } from '../catalogue/faults.ts';
import { solveCircuit } from '../circuit/solveCircuit.ts';
import { atan2, log10, pow } from '../math/elementary.ts';
import { add, distance, sub, type Vec3 } from '../math/vec3.ts';
import { heardMargin, isHeard, levelAt, sumLevels } from '../standards/hearing.ts';
import { placeOn, standById } from '../world/edit.ts';
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
  const at = placeOn(part, features[0]?.offset ?? [0, 0, 0]);
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
  return [
    ...(world.site.light === 'dawn' || world.site.light === 'day' ? [all('birds', 42, 'birds, now and then')] : []),
    ...(world.site.wetness > 0.5 ? [all('fog-drip', 32, 'drops falling from wires and leaves')] : []),
  ].filter(({ level }) => isHeard(level, world.site.backgroundDb));
};

const listen = (world: World, stand: string): readonly Heard[] => {
  const ear = earAt(world, stand);
  const background = backgroundAt(world, stand);
  const truck = truckAt(world, ear);
  const heard = sourcesOf(world)
    .map(
      (source): Heard => ({
        id: source.id,
        sound: source.sound,
        level: levelAt(source.level, source.atM, Math.max(1, distance(source.at, ear))),
        azimuth: directionTo(ear, source.at),
        at: source.at,
        caption: source.caption,
        fault: source.fault,
      }),
    )
    .filter(({ level }) => isHeard(level, background));
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
  return sourcesOf(world).flatMap((source): Sign[] => {
    if (source.fault === null || source.part === null) return [];
    const level = levelAt(source.level, source.atM, Math.max(1, distance(source.at, ear)));
    const perceived = isHeard(level, background);
    return [
      {
        id: source.id,
        fault: source.fault,
        part: source.part,
        sense: 'hear',
        perceived,
        margin: pow(10, (level - background - heardMargin) / 20),
        why: perceived ? null : 'masked',
        words: source.caption,
        at: source.at,
      },
    ];
  });
};
