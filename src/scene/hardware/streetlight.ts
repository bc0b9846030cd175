/**
 * Streetlight on a bracket arm with photocell. Origin: face of the pole at the arm's bolts; it reaches along `side`.
 * States: `dark`, `lit`.
 */
import { builder } from './assembly.ts';
import { bar, block, bolt, curve, rod } from './shapes.ts';
import { wire } from './wire.ts';

export const streetlight = builder({
  kind: 'streetlight',
  states: ['dark', 'lit'],
  size: { arm: 1.8, rise: 0.5 },
  build: (a, s, part) => {
    a.add('zinc', bar([0.006, 0, -0.13], [0.006, 0, 0.13], 0.09, 0.01, [1, 0, 0]));
    for (const z of [-0.09, 0.09]) a.add('zinc', bolt([0.011, 0, z], [1, 0, 0], 0.024, 0));
    const arm = curve(
      [
        [0.01, 0, 0],
        [s.arm * 0.3, 0, s.rise * 0.55],
        [s.arm * 0.7, 0, s.rise * 0.95],
        [s.arm, 0, s.rise],
      ],
      18,
    );
    a.add('aluminium', wire(arm, 0.021, 10));
    const x = s.arm + 0.24;
    a.add(
      'boxPaint',
      block([x, 0, s.rise + 0.015], [0.56, 0.22, 0.11], 0.4),
      block([x - 0.22, 0, s.rise], [0.2, 0.12, 0.1], 0.4),
    );
    a.add(part.state === 'lit' ? 'lampLit' : 'lens', block([x + 0.05, 0, s.rise - 0.042], [0.34, 0.17, 0.03], 0.4));
    a.add('boxPaint', rod([x - 0.12, 0, s.rise + 0.06], [x - 0.12, 0, s.rise + 0.13], 0.042, 18, 0.038));
    a.add('windowDark', rod([x - 0.085, 0, s.rise + 0.1], [x - 0.075, 0, s.rise + 0.1], 0.014, 10));
    a.name('lamp', [x + 0.05, 0, s.rise - 0.06]);
  },
});
