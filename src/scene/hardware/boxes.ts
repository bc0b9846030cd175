/**
 * Boxes on walls: service panel and manual transfer switch. Origin: wall surface at the box's centre; the door faces along
 * `side`. The switch's lever is on its right-hand edge as one faces it. Panel states: `closed`, `open`; the others show the door
 * open with the handles so. Panel variant `interlock`: main and inlet under one slide, which `both-on` has lost. Switch states: `line`, `off`, `generator`.
 */
import { Matrix4 } from 'three';
import { type Assembly, builder } from './assembly.ts';
import { lettering } from './lettering.ts';
import { bar, block, bolt, ring, rod } from './shapes.ts';

const print = (a: Assembly, text: string, height: number, at: readonly [number, number, number]): void => {
  for (const g of lettering(text, height, 0.0006)) a.add('black', g.translate(...at));
};

type Handle = 'on' | 'off' | 'tripped';
/** From and to of a handle across its breaker. */
const throws: Readonly<Record<Handle, readonly [number, number]>> = {
  on: [0.008, 0.02],
  off: [-0.02, -0.03],
  tripped: [-0.003, -0.006],
};

/** A double breaker on its side: ON to the right as one faces it. */
const double = (a: Assembly, d: number, y: number, z: number, handle: Handle, text: string): void => {
  const [from, to] = throws[handle];
  a.add('black', block([d + 0.004, y, z], [0.018, 0.1, 0.072], 0.08));
  a.add('white', bar([d + 0.012, y + from, z], [d + 0.026, y + to, z], 0.026, 0.012, [0, 1, 0]));
  print(a, text, 0.016, [d - 0.0005, y, z + 0.05]);
  print(a, 'ON', 0.011, [d + 0.0135, y + 0.036, z]);
  print(a, 'OFF', 0.011, [d + 0.0135, y - 0.036, z]);
};

const branches = (a: Assembly, d: number, top: number): void => {
  for (let z = top; z > -0.25; z -= 0.044) {
    for (const s of [-1, 1]) {
      a.add('black', block([d + 0.002, s * 0.052, z], [0.014, 0.085, 0.036], 0.06));
      a.add('polymerBlack', block([d + 0.012, s * 0.028, z], [0.012, 0.018, 0.014], 0.1));
    }
  }
};

/** The slide between two handles: pushed over the way of one, so that it cannot be ON; `at` its height, null: taken off. */
const slide = (a: Assembly, d: number, at: number | null): void => {
  const x = d + 0.022;
  for (const z of [0.105, 0.165]) {
    if (at === null) a.add('black', rod([d + 0.001, 0.02, z], [d + 0.0016, 0.02, z], 0.005, 10));
    else a.add('zinc', bolt([x + 0.002, 0.02, z], [1, 0, 0], 0.011, 0));
  }
  if (at === null) return;
  a.add('zinc', bar([x, 0.02, at - 0.062], [x, 0.02, at + 0.062], 0.046, 0.003, [1, 0, 0]));
  a.add('red', bar([x + 0.002, 0.02, at - 0.018], [x + 0.002, 0.02, at + 0.018], 0.036, 0.001, [1, 0, 0]));
};

/** Handles of main and inlet, and where the slide is, by state. */
const interlocked: Readonly<Record<string, readonly [main: Handle, inlet: Handle, slide: number | null]>> = {
  'main-on': ['on', 'off', 0.12],
  'inlet-on': ['off', 'on', 0.15],
  'main-off': ['off', 'off', 0.135],
  'main-tripped': ['tripped', 'off', 0.12],
  'both-on': ['on', 'on', null],
};

const handles: Readonly<Record<string, Handle>> = { 'main-on': 'on', 'main-tripped': 'tripped' };

const breakers = (a: Assembly, d: number, variant: string, state: string): void => {
  a.add('boxPaint', block([d - 0.004, 0, 0], [0.006, 0.31, 0.68], 0.1));
  if (variant === 'interlock') {
    const [main, inlet, at] = interlocked[state] ?? (['on', 'off', 0.12] as const);
    double(a, d, 0, 0.215, main, 'MAIN');
    double(a, d, 0, 0.055, inlet, 'INLET');
    slide(a, d, at);
    branches(a, d, -0.03);
  } else {
    double(a, d, 0, 0.2, handles[state] ?? 'off', 'MAIN');
    branches(a, d, 0.09);
  }
};

export const panel = builder({
  kind: 'panel',
  states: ['closed', 'open', 'main-on', 'main-off', 'main-tripped', 'inlet-on', 'both-on'],
  variants: ['usual', 'interlock'],
  size: { width: 0.36, height: 0.76, depth: 0.1 },
  build: (a, size, part) => {
    const { width: w, height: h, depth: d } = size;
    const open = part.state !== 'closed';
    a.add('boxPaint', block([d / 2, 0, 0], [d, w, h], 0.05));
    if (open) breakers(a, d, part.variant, part.state === 'open' ? 'main-on' : part.state);
    const hinge = new Matrix4()
      .makeTranslation(d + 0.003, -w / 2 + 0.02, 0)
      .multiply(new Matrix4().makeRotationZ(open ? -1.9 : 0));
    a.within(hinge, () => {
      a.add(
        'boxPaint',
        bar([0.004, w / 2 - 0.02, -h / 2 + 0.03], [0.004, w / 2 - 0.02, h / 2 - 0.03], w - 0.06, 0.008, [1, 0, 0]),
      );
      a.add('steelDark', block([0.012, w - 0.065, 0], [0.012, 0.022, 0.045], 0.2));
    });
    a.add('zinc', rod([d / 2, 0, h / 2 - 0.01], [d / 2, 0, h / 2 + 0.06], 0.022, 14));
    a.name('top', [d / 2, 0, h / 2 + 0.06]);
  },
});

const lever: Readonly<Record<string, number>> = { line: 0.75, off: 0, generator: -0.75 };

export const transferSwitch = builder({
  kind: 'transfer-switch',
  states: ['line', 'off', 'generator'],
  size: { width: 0.28, height: 0.42, depth: 0.14 },
  build: (a, size, part) => {
    const { width: w, height: h, depth: d } = size;
    a.add('boxPaint', block([d / 2, 0, 0], [d, w, h], 0.06));
    a.add('boxPaint', bar([d + 0.003, 0, -h / 2 + 0.02], [d + 0.003, 0, h / 2 - 0.02], w - 0.03, 0.006, [1, 0, 0]));
    a.add('white', block([d + 0.007, 0.015, 0.02], [0.001, 0.17, 0.26], 0));
    print(a, 'LINE', 0.024, [d + 0.0076, 0.03, 0.115]);
    print(a, 'OFF', 0.024, [d + 0.0076, 0.03, 0.02]);
    print(a, 'GENERATOR', 0.019, [d + 0.0076, 0.015, -0.075]);
    const at = new Matrix4()
      .makeTranslation(d * 0.55, w / 2, 0.02)
      .multiply(new Matrix4().makeRotationY(-(lever[part.state] ?? 0)));
    a.add('steelDark', rod([d * 0.55, w / 2 - 0.004, 0.02], [d * 0.55, w / 2 + 0.03, 0.02], 0.03, 18));
    a.within(at, () => {
      a.add('black', bar([0, 0.036, 0], [0.15, 0.036, 0], 0.016, 0.022));
      a.add('red', rod([0.13, 0.036, 0], [0.2, 0.036, 0], 0.015, 12), ring([0.2, 0.036, 0], [1, 0, 0], 0.01, 0.006));
    });
    a.add('zinc', bolt([d * 0.55, w / 2 + 0.03, 0.02], [0, 1, 0], 0.02, 0));
    for (const y of [-0.06, 0.06]) a.add('zinc', rod([d / 2, y, -h / 2 + 0.01], [d / 2, y, -h / 2 - 0.06], 0.02, 12));
    a.name('line', [d / 2, -0.06, -h / 2 - 0.06]);
    a.name('generator', [d / 2, 0.06, -h / 2 - 0.06]);
  },
});
