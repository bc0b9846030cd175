/**
 * Which folder of src/ may import which, as data. Rows stand top to bottom; an engine folder is named without
 * `engine/`. A new edge belongs into a commit of its own that says why.
 */

/** What one folder may import. */
export type Room = {
  /** Folders whose values and types may be imported. */
  readonly rooms: readonly string[];
  /** Folders of which only types may be imported. */
  readonly typesOf?: readonly string[];
  /** Packages; one that ends in a slash stands for a whole scope. 'node' is every built-in of Node, '*' any package. */
  readonly packages?: readonly string[];
  /** Whether files outside src/ (assets, scenarios, shared data) may be imported. */
  readonly outside?: boolean;
  /** Whether the scenario reader, which brings YAML with it, is out of bounds. */
  readonly notTheReader?: boolean;
  /** Files of which this one name may not be imported. */
  readonly notTheName?: { readonly file: string; readonly name: string };
};

const worldMay = ['math', 'units', 'catalogue'];
const circuitMay = [...worldMay, 'world', 'network', 'standards'];
const mechanicsMay = [...worldMay, 'world', 'standards'];
const hazardsMay = [...mechanicsMay, 'circuit', 'mechanics'];
const aboveActs = [...circuitMay, 'circuit', 'mechanics', 'senses', 'hazards', 'scenario'];
const actsAndAbove = [...aboveActs, 'acts'];
const scoreAndAbove = [...actsAndAbove, 'score'];
const wholeEngine = [...scoreAndAbove, 'trainees', 'proof', 'variants', 'debrief', 'record', 'qualification'];

/** The folders of the sealed engine: no DOM, Node, Phaser, XState, clock, network access, locale. */
export const engineRooms: Readonly<Record<string, Room>> = {
  math: { rooms: [], packages: ['@stdlib/', '@noble/hashes'] },
  units: { rooms: ['math'] },
  standards: { rooms: ['math', 'units'] },
  network: { rooms: ['math'] },
  catalogue: { rooms: ['math', 'units', 'standards'], typesOf: ['network'] },
  scenario: { rooms: ['math', 'units', 'catalogue'], packages: ['yaml', 'zod', 'fastest-levenshtein'] },
  world: { rooms: worldMay, typesOf: ['scenario'] },
  circuit: { rooms: circuitMay, typesOf: ['scenario'] },
  mechanics: { rooms: mechanicsMay, typesOf: ['scenario'] },
  senses: { rooms: hazardsMay, typesOf: ['scenario'] },
  hazards: { rooms: hazardsMay, typesOf: ['scenario'] },
  acts: { rooms: aboveActs, packages: ['zod'], notTheReader: true },
  score: { rooms: actsAndAbove, notTheReader: true },
  trainees: { rooms: scoreAndAbove, notTheReader: true },
  proof: { rooms: actsAndAbove, packages: ['zod'], notTheReader: true },
  variants: { rooms: [...actsAndAbove, 'proof'], packages: ['yaml', 'zod'] },
  debrief: { rooms: scoreAndAbove, notTheReader: true },
  record: { rooms: scoreAndAbove, notTheReader: true },
  qualification: { rooms: scoreAndAbove, notTheReader: true },
};

/** The folders around the engine. */
export const hostRooms: Readonly<Record<string, Room>> = {
  drill: { rooms: ['score', 'acts', 'world', 'senses'], packages: ['xstate'] },
  scene: {
    rooms: ['senses', 'mechanics', 'world', 'catalogue', 'math'],
    typesOf: ['drill'],
    packages: ['phaser', 'three'],
    outside: true,
  },
  screens: {
    rooms: wholeEngine,
    typesOf: ['drill'],
    packages: ['preact', '@preact/signals'],
    notTheName: { file: 'src/engine/acts/act.ts', name: 'act' },
  },
  sound: { rooms: ['senses'], typesOf: ['drill'], packages: ['howler'] },
  app: { rooms: [...wholeEngine, 'drill', 'scene', 'screens', 'sound'], packages: ['*'], outside: true },
  cli: { rooms: [...wholeEngine, 'setup'], packages: ['*', 'node'], outside: true },
  setup: { rooms: [], packages: ['vite', 'vitest', 'node'], outside: true },
};

/** Every folder by name. */
export const rooms: Readonly<Record<string, Room>> = { ...engineRooms, ...hostRooms };
