/** The engine is sealed: every import of src/ against the table in layers/allowed.ts, and each rule broken once. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { describe, expect, test } from 'vitest';
import { root } from '../src/setup/run.mjs';
import { engineRooms, hostRooms } from './layers/allowed.ts';
import { check, type Files } from './layers/check.ts';

const sourceFiles = (): Files =>
  new Map(
    readdirSync(join(root, 'src'), { recursive: true, withFileTypes: true })
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .sort()
      .map((path) => [path.slice(root.length).split(sep).join('/'), readFileSync(path, 'utf8')]),
  );

/** A small house that keeps all the rules; a test lays one bad file over it. */
const house: Readonly<Record<string, string>> = {
  'src/engine/math/complex.ts': `import sin from '@stdlib/math-base-special-sin';\nexport const one = sin(1);`,
  'src/engine/units/length.ts': `import { one } from '../math/complex.ts';\nexport type Metres = number; export const m = one;`,
  'src/engine/network/types.ts': `export type Element = 1; export const element = 1;`,
  'src/engine/catalogue/kinds.ts': `import type { Element } from '../network/types.ts';\nexport type Kind = Element;`,
  'src/engine/scenario/parse.ts': `import { parse } from 'yaml';\nexport const read = parse;`,
  'src/engine/scenario/parseAll.ts': `export { read as readAll } from './parse.ts';`,
  'src/engine/scenario/schema.ts': `import { z } from 'zod';\nexport const schema = z; export type Scenario = 1;`,
  'src/engine/world/build.ts': `import type { Scenario } from '../scenario/schema.ts';\nexport type World = Scenario; export const build = 1;`,
  'src/engine/acts/act.ts': `import type { World } from '../world/build.ts';\nexport const act = 1; export type Act = World;`,
  'src/drill/machine.ts': `import { setup } from 'xstate';\nimport { act } from '../engine/acts/act.ts';\nexport const machine = [setup, act]; export type Drill = 1;`,
  'src/scene/stage.ts': `import Phaser from 'phaser';\nimport type { Drill } from '../drill/machine.ts';\nexport const stage: [Drill, unknown] = [1, Phaser];`,
  'src/screens/call.tsx': `import { read } from '../engine/scenario/parse.ts';\nimport type { Act } from '../engine/acts/act.ts';\nexport const call = (a: Act) => [read, a];`,
  'src/sound/play.ts': `import { Howl } from 'howler';\nexport const play = Howl;`,
  'src/app/main.ts': `import '../scene/stage.ts';\nimport svg from '../../assets/pole.svg?url';\nexport const all = [svg, import('idb'), import.meta.glob('../../scenarios/*.yaml')];`,
  'src/cli/main.ts': `import { readFileSync } from 'node:fs';\nimport { Command } from 'commander';\nexport const main = [readFileSync, Command];`,
};

const problemsWith = (file: string, source: string): readonly string[] =>
  check(new Map(Object.entries({ ...house, [file]: source })));

const engineFile = 'src/engine/world/bad.ts';

describe('the sources', () => {
  test('keep every rule of the table', () => {
    expect(check(sourceFiles())).toEqual([]);
  });

  test('are all seen: this very table knows the set-up scripts and the command line', () => {
    const files = [...sourceFiles().keys()];
    expect(files).toContain('src/setup/run.mjs');
    expect(files).toContain('src/cli/main.ts');
  });
});

describe('the table', () => {
  const names = Object.keys(engineRooms);

  test('lets an engine folder import only folders above it', () => {
    for (const [index, [name, room]] of Object.entries(engineRooms).entries()) {
      const named = [...room.rooms, ...(room.typesOf ?? [])];
      expect({ name, below: named.filter((other) => !names.slice(0, index).includes(other)) }).toEqual({
        name,
        below: [],
      });
    }
  });

  test('lets acts import all above it, and the screens the whole engine', () => {
    expect([...(engineRooms.acts?.rooms ?? [])].sort()).toEqual(names.slice(0, names.indexOf('acts')).sort());
    expect([...(hostRooms.screens?.rooms ?? [])].sort()).toEqual([...names].sort());
  });
});

describe('the checker', () => {
  test('accepts a house that keeps the rules', () => {
    expect(check(new Map(Object.entries(house)))).toEqual([]);
  });

  const breaches: readonly (readonly [rule: string, file: string, source: string, problem: string])[] = [
    [
      'a forbidden direction',
      'src/engine/math/bad.ts',
      `import { m } from '../units/length.ts';`,
      'math/ may not import units/',
    ],
    [
      'a forbidden direction by type',
      'src/engine/math/bad.ts',
      `import type { Metres } from '../units/length.ts';`,
      'math/ may not import units/',
    ],
    [
      'a forbidden direction by re-export',
      'src/engine/math/bad.ts',
      `export { m } from '../units/length.ts';`,
      'math/ may not import units/',
    ],
    [
      'a forbidden direction by export of all',
      'src/engine/math/bad.ts',
      `export * from '../units/length.ts';`,
      'math/ may not import units/',
    ],
    [
      'a forbidden direction by dynamic import',
      'src/engine/math/bad.ts',
      `export const m = import('../units/length.ts');`,
      'math/ may not import units/',
    ],
    [
      'a forbidden direction by import type',
      'src/engine/math/bad.ts',
      `export type M = import('../units/length.ts').Metres;`,
      'math/ may not import units/',
    ],
    [
      'a forbidden direction by glob',
      'src/scene/bad.ts',
      `export const all = import.meta.glob('../screens/*.tsx');`,
      'scene/ may not import screens/',
    ],
    [
      'a forbidden direction by a worker',
      'src/sound/bad.ts',
      `export const w = new Worker(new URL('../scene/stage.ts', import.meta.url));`,
      'sound/ may not import scene/',
    ],
    [
      'a host imported by the engine',
      engineFile,
      `import { stage } from '../../scene/stage.ts';`,
      'world/ may not import scene/',
    ],
    [
      'screens importing the scene',
      'src/screens/bad.ts',
      `import { stage } from '../scene/stage.ts';`,
      'screens/ may not import scene/',
    ],
    [
      'a value where only types are due',
      'src/engine/catalogue/bad.ts',
      `import { element } from '../network/types.ts';`,
      'only types of network/',
    ],
    [
      'a type import written as a value import',
      'src/engine/catalogue/bad.ts',
      `import { type Element } from '../network/types.ts';`,
      'only types of network/',
    ],
    [
      'a view loading the drill',
      'src/scene/bad.ts',
      `import { machine } from '../drill/machine.ts';`,
      'only types of drill/',
    ],
    [
      'the reader loaded by acts',
      'src/engine/acts/bad.ts',
      `import { read } from '../scenario/parse.ts';`,
      'acts/ may not import the reader',
    ],
    [
      'the reader loaded by a detour',
      'src/engine/acts/bad.ts',
      `import { readAll } from '../scenario/parseAll.ts';`,
      'acts/ may not import the reader',
    ],
    ['app imported', 'src/screens/bad.ts', `import { all } from '../app/main.ts';`, 'nobody imports app/'],
    [
      'app imported by the command line',
      'src/cli/bad.ts',
      `import { all } from '../app/main.ts';`,
      'nobody imports app/',
    ],
    [
      'screens importing act',
      'src/screens/bad.ts',
      `import { act } from '../engine/acts/act.ts';`,
      'anything of the engine but that',
    ],
    [
      'screens importing act under another name',
      'src/screens/bad.ts',
      `import { act as go } from '../engine/acts/act.ts';`,
      'anything of the engine but that',
    ],
    [
      'screens importing act with all its file',
      'src/screens/bad.ts',
      `import * as acts from '../engine/acts/act.ts';`,
      'anything of the engine but that',
    ],
    ['a package in the engine', engineFile, `import { z } from 'zod';`, 'imports the package zod'],
    ['Phaser in the engine', engineFile, `import Phaser from 'phaser';`, 'imports the package phaser'],
    [
      'Node in the engine',
      engineFile,
      `import { readFileSync } from 'node:fs';`,
      'imports node:fs, a built-in of Node',
    ],
    ['Node without its prefix', engineFile, `import { readFileSync } from 'fs';`, 'imports fs, a built-in of Node'],
    ['Node in the app', 'src/app/bad.ts', `import { readFileSync } from 'node:fs';`, 'a built-in of Node'],
    ['three outside the scene', 'src/screens/bad.ts', `import * as three from 'three';`, 'imports the package three'],
    [
      'a package whose name only begins alike',
      'src/screens/bad.ts',
      `import x from 'preact-router';`,
      'imports the package preact-router',
    ],
    ['an address as an import', 'src/app/bad.ts', `import 'https://example.org/x.js';`, 'by an absolute path'],
    [
      'a path computed at run time',
      'src/scene/bad.ts',
      `export const load = (f: string) => import(f);`,
      'computed at run time',
    ],
    [
      'a folder index',
      'src/engine/units/bad.ts',
      `import { one } from '../math/index.ts';`,
      'imports the folder index',
    ],
    ['a folder', 'src/engine/units/bad.ts', `import { one } from '../math';`, 'is in no folder of the table'],
    [
      'an import without extension',
      'src/engine/units/bad.ts',
      `import { one } from '../math/complex';`,
      'is no file of src/',
    ],
    ['a folder that the table lacks', 'src/utils/bad.ts', `export const x = 1;`, 'is in no folder of the table'],
    ['a file beside the engine folders', 'src/engine/bad.ts', `export const x = 1;`, 'is in no folder of the table'],
    ['a clock', engineFile, `export const now = Date.now();`, 'uses Date'],
    ['a new date', engineFile, `export const now = new Date();`, 'uses Date'],
    ['a performance clock', engineFile, `export const now = performance.now();`, 'uses performance'],
    ['unseeded chance', engineFile, `export const x = Math.random();`, 'uses Math.random'],
    ['a banned function of Math', engineFile, `export const x = Math.sin(1);`, 'uses Math.sin'],
    ['a banned function of Math by a string', engineFile, `export const x = Math['pow'](2, 3);`, 'uses Math.pow'],
    ['a computed member of Math', engineFile, `export const f = (k: 'sin') => Math[k](1);`, 'uses Math.[computed]'],
    ['Math taken apart', engineFile, `const { sin } = Math; export const x = sin(1);`, 'uses Math as a value'],
    ['a power', engineFile, `export const x = (y: number) => y ** 2;`, 'uses **'],
    ['a power by assignment', engineFile, `let x = 2; x **= 2; export { x };`, 'uses **='],
    ['text by locale', engineFile, `export const x = (1).toLocaleString();`, 'uses toLocaleString'],
    ['case by locale', engineFile, `export const x = 'a'?.toLocaleUpperCase();`, 'uses toLocaleUpperCase'],
    ['order by locale', engineFile, `export const x = ['b'].sort((p, q) => p.localeCompare(q));`, 'uses localeCompare'],
    ['Intl', engineFile, `export const x = new Intl.NumberFormat();`, 'uses Intl'],
    ['a way round by globalThis', engineFile, `export const x = globalThis;`, 'uses globalThis'],
    ['a way round by eval', engineFile, `export const x = eval('1');`, 'uses eval'],
    ['the module’s own address', engineFile, `export const x = import.meta;`, 'uses import.meta'],
  ];
  test.each(breaches)('reports %s', (_rule, file, source, problem) => {
    const problems = problemsWith(file, source);
    expect(problems.filter((line) => line.startsWith(file) && line.includes(problem))).not.toEqual([]);
  });

  test('reports a cycle of values with its files', () => {
    const bad = {
      ...house,
      'src/sound/a.ts': `import { b } from './b.ts';\nexport const a = b;`,
      'src/sound/b.ts': `import { a } from './a.ts';\nexport const b = a;`,
    };
    expect(check(new Map(Object.entries(bad)))).toEqual([
      'src/sound/a.ts: import cycle of src/sound/a.ts, src/sound/b.ts',
    ]);
  });

  test('reports a cycle made of types alone', () => {
    const bad = {
      ...house,
      'src/sound/a.ts': `import type { B } from './b.ts';\nexport type A = B;`,
      'src/sound/b.ts': `import type { A } from './c.ts';\nexport type B = A;`,
      'src/sound/c.ts': `export type { A } from './a.ts';`,
    };
    expect(check(new Map(Object.entries(bad)))).toEqual([
      'src/sound/a.ts: import cycle of src/sound/a.ts, src/sound/b.ts, src/sound/c.ts',
    ]);
  });

  test('leaves alone names that only look banned, and banned words outside the engine', () => {
    const plain = `export const paper = { Date: 1, performance: 2 }; export const x = paper.Date + Math.sqrt(2) + Math.PI; // Date, a ** b\nexport const s = 'Math.random()';`;
    expect(problemsWith('src/engine/world/good.ts', plain)).toEqual([]);
    expect(problemsWith('src/scene/good.ts', `export const now = () => Math.sin(performance.now()) ** 2;`)).toEqual([]);
  });

  test('gives the line of a breach', () => {
    expect(problemsWith(engineFile, `export const a = 1;\nexport const b = Math.exp(1);`)).toEqual([
      `${engineFile}:2: uses Math.exp`,
    ]);
  });
});

describe('the engine’s compiler settings', () => {
  const compile = (source: string): string => {
    mkdirSync(join(root, '.cache'), { recursive: true });
    const folder = mkdtempSync(join(root, '.cache', 'seal-'));
    try {
      writeFileSync(
        join(folder, 'tsconfig.json'),
        JSON.stringify({ extends: '../../src/engine/tsconfig.json', include: ['.'] }),
      );
      writeFileSync(join(folder, 'probe.ts'), source);
      const tsc = join(root, 'node_modules', 'typescript', 'bin', 'tsc');
      return spawnSync(process.execPath, [tsc, '--noEmit', '-p', folder], { encoding: 'utf8' }).stdout;
    } finally {
      rmSync(folder, { recursive: true });
    }
  };

  test('accept plain ES2022 and refuse DOM, Node and timers', () => {
    expect(compile('export const x: number = [1].at(0) ?? 0;')).toBe('');
    const problems = compile('export const x = [document, window, process, setTimeout, fetch, console];');
    for (const name of ['document', 'window', 'process', 'setTimeout', 'fetch', 'console'])
      expect(problems).toContain(`'${name}'`);
  });
});
