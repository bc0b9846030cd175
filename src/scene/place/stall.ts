/** A market stall: a striped canopy on four posts over a table with boxes. Origin: ground under its middle; sold from +x. */
import { builder } from '../hardware/assembly.ts';
import { bar, block, rod } from '../hardware/shapes.ts';
import type { MaterialName } from '../materials/materials.ts';
import { stream } from '../materials/noise.ts';

const cloths: readonly MaterialName[] = ['red', 'green', 'fabricDark', 'safetyOrange'];
const wares: readonly MaterialName[] = ['red', 'green', 'yellow', 'safetyOrange', 'leather', 'white'];

export const stall = builder({
  kind: 'stall',
  size: { width: 3, depth: 2 },
  build: (a, s, part) => {
    const next = stream(part.seed * 17 + 3);
    const cloth = cloths[Math.floor(next() * cloths.length)] ?? 'red';
    const [w, d] = [s.width / 2, s.depth / 2];
    for (const x of [-d, d])
      for (const y of [-w, w]) a.add('zinc', rod([x, y, 0], [x, y, x > 0 ? 2.15 : 2.5], 0.022, 8));
    const stripes = 8;
    for (let i = 0; i < stripes; i++) {
      const y = -w - 0.1 + ((i + 0.5) * (s.width + 0.2)) / stripes;
      const wide = (s.width + 0.2) / stripes;
      const material = i % 2 === 0 ? cloth : 'white';
      a.add(
        material,
        bar([-d - 0.15, y, 2.55], [d + 0.35, y, 2.1], wide, 0.015),
        block([d + 0.35, y, 2.0], [0.015, wide, 0.22], 0),
      );
    }
    a.add('wood', block([0.25, 0, 0.82], [1.3, s.width - 0.2, 0.05], 0.1));
    a.add(cloth, block([0.9, 0, 0.45], [0.02, s.width - 0.2, 0.75], 0));
    for (let i = 0; i < 10; i++) {
      const at = [0.05 + 0.5 * (i % 2), -w + 0.35 + Math.floor(i / 2) * 0.56, 0.92] as const;
      a.add('leather', block([at[0], at[1], 0.89], [0.42, 0.48, 0.1], 0.05));
      a.add(wares[Math.floor(next() * wares.length)] ?? 'green', block(at, [0.36, 0.42, 0.16], 0.45));
    }
  },
});
