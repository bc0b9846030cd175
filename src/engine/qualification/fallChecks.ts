/** What comes down or bends in a scene: pole with its pulls, lost ties in a row, hanging leads, dropped pieces, wire on the ground. */

import { solveCircuit } from '../circuit/solveCircuit.ts';
import { groundReach, swingAt } from '../mechanics/hangingLead.ts';
import { looseOver } from '../mechanics/lostTies.ts';
import { poleBending } from '../mechanics/poleBending.ts';
import { conductorById } from '../standards/conductors.ts';
import { fallEnergy, helmetJoules } from '../standards/droppedObject.ts';
import { hemisphereStep, pacesApart } from '../standards/electrode.ts';
import { groundContactAmperes } from '../standards/groundContact.ts';
import { weightPerMetre } from '../standards/sag.ts';
import type { Part, World } from '../world/types.ts';
import { bare, bareWorld } from './bareWorld.ts';
import { checkWriter, relative, within } from './checkWriter.ts';
import type { Check } from './types.ts';

const foot = 0.3048;
const inch = 0.0254;
const pound = 4.4482216152605;
const footPound = foot * pound;

/** A pole of 37.5 in at the ground with one wire that pulls 600 lb at 38 ft, guyed or not. */
function pulled(guyed: boolean, strength = 1): World {
  const swan = conductorById('acsr-4');
  if (swan === undefined) throw new Error('no such conductor');
  const span = 60;
  const height = 38 * foot;
  const sagM = (weightPerMetre(swan.kilogramsPerMetre) * span * span) / (8 * 600 * pound);
  const values = { heightM: 12, topRadiusM: 0.1, buttRadiusM: (37.5 * inch) / (2 * Math.PI), strength };
  const parts: readonly Part[] = [
    { ...bare('p.pole', 'pole', { values }), pole: 'p' },
    bare('s.phase', 'phase-span', {
      at: [0, 0, height],
      end: [span, 0, height],
      values: { lengthM: span, sagM },
      words: { conductor: 'Swan' },
    }),
    ...(guyed ? [{ ...bare('p.guy', 'guy', { at: [0, 0, height], end: [-height, 0, 0] }), pole: 'p' }] : []),
  ];
  return bareWorld(parts);
}

const example = checkWriter('pole in a scene', 'published value', 'published pole strength worked example');
const guy = checkWriter('pole in a scene', 'common practice', 'statics worked by hand');
const poles = [
  example({
    id: 'used',
    quantity: 'part of its strength that the pull of a wire uses',
    input: '600 lb at 38 ft, circumference 37.5 in, 8000 psi',
    ours: () => {
      const { demand, capacity } = poleBending(pulled(false), 'p');
      return (100 * demand) / capacity;
    },
    reference: 20.5,
    unit: '%',
    tolerance: within(0.05),
  }),
  example({
    id: 'withstands',
    quantity: 'moment that the groundline withstands',
    input: 'the same pole',
    ours: () => poleBending(pulled(false), 'p').capacity / footPound,
    reference: 111315,
    unit: 'ft lb',
    tolerance: relative(1e-4),
  }),
  guy({
    id: 'guy-tension',
    quantity: 'pull along a guy at one to one',
    input: '600 lb at its height: 600 sqrt 2',
    ours: () => poleBending(pulled(true), 'p').guyTension / pound,
    reference: 848.53,
    unit: 'lb',
    tolerance: relative(1e-4),
  }),
];

/** A pole's line that lies on a surface: a stiff source, one span, parted beside its far end. */
function downOn(surface: keyof typeof groundContactAmperes): World {
  const ohms = 7200 / groundContactAmperes[surface];
  const span = bare('s.phase', 'phase-span', {
    at: [0, 0, 10],
    end: [60, 0, 10],
    nets: { a: 'line', b: 'far' },
    values: { lengthM: 60, sagM: 0.6 },
    words: { conductor: 'Swan' },
  });
  const fault = { id: 'parted', kind: 'conductor-broken', side: 'any', to: null } as const;
  return bareWorld([
    bare('source', 'system-source', {
      nets: { line: 'line', neutral: 'earth' },
      values: { volts: 7200, ohms: 1, reactance: 1 },
    }),
    { ...span, faults: [{ ...fault, values: { breakM: 58, groundOhms: ohms, credibleGroundOhms: ohms } }] },
  ]);
}

const staged = checkWriter(
  'wire on the ground',
  'from memory',
  'staged tests at 12.5 kV, amperes by surface, from memory of papers on downed conductors',
);
const pace = checkWriter('wire on the ground', 'common practice', 'rho I/(2 pi) (1/r - 1/(r + 1)) worked by hand');
const lying = [
  ...(['wet-sand', 'dry-grass', 'wet-grass', 'reinforced-concrete'] as const).map((surface) =>
    staged({
      id: surface,
      quantity: 'current that a wire on the ground carries',
      input: `7.2 kV to ground, ${surface.replace('-', ' ')}, solved with source and span`,
      ours: () => solveCircuit(downOn(surface)).branchCurrent('s.phase', 'soil-a'),
      reference: groundContactAmperes[surface],
      unit: 'A',
      tolerance: relative(0.05),
    }),
  ),
  pace({
    id: 'pace',
    quantity: 'distance at which a pace meets 100 V',
    input: '50 A into 120 ohm m: r (r + 1) = 9.5493',
    ours: () => pacesApart(120, 50, 100),
    reference: 2.6303,
    unit: 'm',
    tolerance: relative(1e-4),
  }),
  pace({
    id: 'pace-back',
    quantity: 'step voltage there',
    input: 'a hemisphere of the same current',
    ours: () => hemisphereStep(120, 50, 2.6303),
    reference: 100,
    unit: 'V',
    tolerance: relative(1e-4),
  }),
];

const drops = checkWriter(
  'dropped piece',
  'published value',
  'published page of the DROPS work group calculator: a 200 g bolt from 27 m',
);
const hat = checkWriter('dropped piece', 'from memory', 'ANSI/ISEA Z89.1, from memory: crown impact 40 ft lb');
const pieces = [
  drops({
    id: 'bolt',
    quantity: 'energy of a piece that falls',
    input: '0.2 kg from 27 m',
    ours: () => fallEnergy(0.2, 27),
    reference: 53,
    unit: 'J',
    tolerance: relative(0.005),
  }),
  hat({
    id: 'hat',
    quantity: 'energy that a hard hat is tested with',
    input: '8 lb from 5 ft',
    ours: () => helmetJoules / footPound,
    reference: 40,
    unit: 'ft lb',
    tolerance: relative(0.001),
  }),
];

const row = checkWriter('lost ties in a row', 'common practice', 'geometry of equal parabolas that become one');
const three = looseOver(
  [
    [0, 0, 10],
    [50, 0, 10],
    [100, 0, 10],
    [150, 0, 10],
  ],
  [0.6, 0.6, 0.6],
).conductor;
const lead = checkWriter('hanging lead', 'common practice', 'right triangles worked by hand');
const hanging = [
  row({
    id: 'three-sag',
    quantity: 'sag of three equal spans as one',
    input: 'three of 50 m with 0.6 m: three times the sag',
    ours: () => three.sag,
    reference: 1.8,
    unit: 'm',
    tolerance: relative(1e-6),
  }),
  row({
    id: 'three-length',
    quantity: 'length of that conductor',
    input: 'the same: 150 + 3 times 8 d2/3S',
    ours: () => three.length,
    reference: 150.0576,
    unit: 'm',
    tolerance: relative(1e-8),
  }),
  lead({
    id: 'ground',
    quantity: 'how far along the ground a lead reaches',
    input: '13 m held at 12 m: 5, 12, 13',
    ours: () => groundReach({ held: [0, 0, 12], length: 13 }),
    reference: 5,
    unit: 'm',
    tolerance: relative(1e-9),
  }),
  lead({
    id: 'hands',
    quantity: 'how far out it swings at a height',
    input: '5 m held at 6 m, at 2 m: 3, 4, 5',
    ours: () => swingAt({ held: [0, 0, 6], length: 5 }, 2),
    reference: 3,
    unit: 'm',
    tolerance: relative(1e-9),
  }),
];

/** Checks of what comes down. */
export const fallChecks: readonly Check[] = [...poles, ...hanging, ...pieces, ...lying];
