/** Each rule about odd scenes fires on a scene that breaks it, and on none of the shipped ones. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from '../../../src/engine/scenario/parse.ts';
import { oddIn } from '../../../src/engine/variants/odd.ts';
import { build } from '../../../src/engine/world/build.ts';
import { root } from '../../../src/setup/run.mjs';
import { shipped } from '../proof/scenes.ts';

const yaml = (name: string): string => readFileSync(join(root, 'scenarios', `${name}.yaml`), 'utf8');

const oddOf = (text: string): string | null => {
  const parsed = parse(text, 'scene', { parts: (scenario) => build(scenario, '').parts });
  if (!parsed.ok) throw new Error(parsed.problems.map(({ message }) => message).join('\n'));
  return oddIn(parsed.scenario, build(parsed.scenario, parsed.hash, 1));
};

const changed = (name: string, ...changes: readonly (readonly [string, string])[]): string =>
  changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`no such text: ${from}`);
    return text.replace(from, to);
  }, yaml(name));

it.each(shipped)('nothing is odd about %s', (name) => {
  expect(oddOf(yaml(name))).toBeNull();
});

const dry = 'wetness: 0 %';
const laid = (fault: string): readonly [string, string] => ['faults: []', `faults:\n  - ${fault}`];
const like = (fault: string): readonly [string, string] => ['look-alikes:\n', `look-alikes:\n  - ${fault}\n`];
const own = (set: string, says = 'generator: It runs.'): readonly [string, string] => [
  'generator: There is none here.',
  `${says}\n    own: ${set}`,
];

describe.each([
  [
    'rain in frost',
    /rain falls in frost/,
    [
      [dry, 'wetness: 90 %\n  precipitation: rain'],
      ['64 °F', '20 °F'],
    ],
  ],
  [
    'a call for nothing, with a hole in a glove',
    /nobody is out and nothing is wrong/,
    [['    state: { position: open, link: blown }\n', ''], laid('{ id: hole, kind: glove-pinhole, on: gloves-1 }')],
  ],
  ['snow in May', /snow falls in mild air/, [[dry, 'wetness: 20 %\n  precipitation: snow']]],
  ['noon at night', /the sky gives 20000 lx by night/, [['light: day', 'light: night']]],
  ['hoarfrost in mild air', /hoarfrost in mild/, [like('{ id: rime, kind: hoarfrost, on: site }')]],
  ['a flood on dry ground', /ground that is dry/, [laid('{ id: water, kind: flooded-ground, on: site }')]],
  ['thunder out of a bright sky', /bright sky/, [laid('{ id: storm, kind: lightning-near, on: site }')]],
  [
    'a shadow at dusk',
    /shadow without sun/,
    [['light: day', 'light: dusk'], ['20 klx', '20 lx'], like('{ id: shade, kind: shadow-band, on: p2.pole }')],
  ],
  [
    'a worker who is away and tired',
    /not coming is tired/,
    [laid('{ id: away, kind: working-alone, on: second }\n  - { id: tired, kind: second-fatigued, on: second }')],
  ],
  [
    'a set that nobody started',
    /nobody is home who started it/,
    [
      own(
        '{ kind: generator, rating: 7 kVA, connection: panel-cord, running: true, place: in the shed }',
        'main: It is on.',
      ),
    ],
  ],
  [
    'panels by night',
    /panels give power/,
    [
      ['light: day', 'light: night'],
      ['20 klx', '0.1 lx'],
      own('{ kind: photovoltaic, rating: 7 kVA, connection: panel-breaker, running: true, place: on the roof }'),
    ],
  ],
  ['a tube hung and closed', /which stands open/, [laid('{ id: hung, kind: fuse-tube-hung, on: p2.cutout }')]],
  ['a line that climbs', /poles ML-4 and ML-5 differ by/, [['x: -48 m, length: 40 ft', 'x: -48 m, length: 55 ft']]],
  ['talk of rain in the sun', /speaks of rain/, [['One bang and a puff', 'It rains, one bang and a puff']]],
] as readonly (readonly [string, RegExp, readonly (readonly [string, string])[]])[])('%s', (_what, why, changes) => {
  it('is said to be odd', () => {
    expect(oddOf(changed('mill-lane-refuse', ...changes))).toMatch(why);
  });
});

it('wet wood and rain go together, a wet track on dry wood does not', () => {
  expect(oddOf(changed('works-road-bank', ['wetness: 60 %', 'wetness: 0 %']))).toMatch(/dry wood has a wet track/);
});
