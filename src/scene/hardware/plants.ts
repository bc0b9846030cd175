/**
 * Customer's plant on a wall. `inverter`: finned white box with a lamp and a figure window, disconnect beside it; states
 * `following` (green lamp), `tripped` (red), `stopped` (dark). `battery`: tall cabinet. `solar-panels`: panels on a roof, in
 * the roof's plane: origin its middle, x down the slope by `pitch`. Size: columns and rows of panels, pitch.
 */
import { Matrix4 } from 'three';
import { builder } from './assembly.ts';
import { lettering } from './lettering.ts';
import { bar, block, rod } from './shapes.ts';

const lamps: Readonly<Record<string, 'lampGreen' | 'lampRed' | 'black'>> = {
  following: 'lampGreen',
  tripped: 'lampRed',
  stopped: 'black',
};

export const inverter = builder({
  kind: 'inverter',
  states: ['following', 'tripped', 'stopped'],
  size: { width: 0.42, height: 0.66, depth: 0.17 },
  build: (a, s, part) => {
    a.add('white', block([s.depth / 2 + 0.02, 0, 0], [s.depth, s.width, s.height], 0.09));
    for (let i = 0; i < 11; i++)
      a.add(
        'aluminium',
        bar(
          [0.008, -s.width / 2 + 0.02 + (i * (s.width - 0.04)) / 10, -s.height / 2 + 0.04],
          [0.008, -s.width / 2 + 0.02 + (i * (s.width - 0.04)) / 10, s.height / 2 - 0.04],
          0.006,
          0.03,
          [1, 0, 0],
        ),
      );
    const x = s.depth + 0.021;
    a.add('black', block([x, 0, 0.12], [0.006, 0.2, 0.09], 0.1));
    if (part.state !== 'stopped') {
      a.add('display', block([x + 0.003, 0, 0.12], [0.002, 0.14, 0.05], 0));
      for (const g of lettering(part.state === 'tripped' ? 'E 03' : '4.5', 0.026, 0.0006))
        a.add('black', g.translate(x + 0.004, 0, 0.12));
    }
    a.add(lamps[part.state] ?? 'black', rod([x, 0.13, 0.19], [x + 0.008, 0.13, 0.19], 0.01, 12));
    a.add('boxPaint', block([0.05, s.width / 2 + 0.2, -0.1], [0.1, 0.18, 0.26], 0.08));
    a.add('red', bar([0.105, s.width / 2 + 0.2, -0.12], [0.105, s.width / 2 + 0.2, -0.04], 0.03, 0.03, [1, 0, 0]));
    for (const y of [-0.1, 0.1])
      a.add('zinc', rod([0.08, y, -s.height / 2 + 0.01], [0.08, y, -s.height / 2 - 0.14], 0.014, 10));
    a.add('zinc', rod([0.05, s.width / 2 + 0.11, -0.1], [0.05, s.width / 2 - 0.02, -0.1], 0.012, 10));
    a.name('out', [0.05, s.width / 2 + 0.2, -0.23]);
  },
});

export const batteryCabinet = builder({
  kind: 'battery',
  states: ['following', 'tripped', 'stopped'],
  size: { width: 0.62, height: 1.15, depth: 0.17 },
  build: (a, s, part) => {
    a.add('white', block([s.depth / 2 + 0.02, 0, 0], [s.depth, s.width, s.height], 0.16));
    a.add(
      'boxPaint',
      bar([0.01, 0, -s.height / 2 + 0.06], [0.01, 0, s.height / 2 - 0.06], s.width - 0.1, 0.02, [1, 0, 0]),
    );
    a.add(
      lamps[part.state] ?? 'black',
      bar(
        [s.depth + 0.02, -s.width / 2 + 0.05, -0.2],
        [s.depth + 0.02, -s.width / 2 + 0.05, 0.25],
        0.008,
        0.006,
        [1, 0, 0],
      ),
    );
    a.add('zinc', rod([0.08, 0.2, -s.height / 2 + 0.01], [0.08, 0.2, -s.height / 2 - 0.16], 0.016, 10));
    a.add('yellow', block([s.depth + 0.0205, 0.2, -0.4], [0.002, 0.1, 0.07], 0));
    a.name('out', [0.08, 0.2, -s.height / 2 - 0.16]);
  },
});

export const solarPanels = builder({
  kind: 'solar-panels',
  size: { columns: 4, rows: 2, pitch: 0.5 },
  build: (a, s) => {
    const [w, h] = [1.02, 1.68];
    a.within(new Matrix4().makeRotationY(s.pitch), () => {
      for (let i = 0; i < s.columns; i++) {
        for (let j = 0; j < s.rows; j++) {
          const y = (i - (s.columns - 1) / 2) * (w + 0.02);
          const x = (j - (s.rows - 1) / 2) * (h + 0.02);
          a.add('aluminium', block([x, y, 0.1], [h, w, 0.035], 0.2));
          a.add('solar', block([x, y, 0.1185], [h - 0.05, w - 0.05, 0.003], 0));
          for (let k = 1; k < 6; k++)
            a.add('tinned', block([x, y - w / 2 + (k * w) / 6, 0.1202], [h - 0.06, 0.003, 0.0006], 0));
          for (let k = 1; k < 10; k++)
            a.add('tinned', block([x - h / 2 + (k * h) / 10, y, 0.1202], [0.003, w - 0.06, 0.0006], 0));
        }
      }
      for (const x of [-0.6, 0.6])
        a.add('zinc', bar([x, (-s.columns * w) / 2, 0.06], [x, (s.columns * w) / 2, 0.06], 0.04, 0.04));
    });
  },
});
