/** A World that holds, beside the fog scene's, one part of any kind, with any fault laid on it. */
import { componentKind } from '../../src/engine/catalogue/components.ts';
import { faultKind } from '../../src/engine/catalogue/faults.ts';
import type { Side } from '../../src/engine/catalogue/types.ts';
import { partForm } from '../../src/engine/world/partForm.ts';
import type { LaidFault, Part, World } from '../../src/engine/world/types.ts';
import { fogWorld } from './fogWorld.ts';

const bare: World = (() => {
  const world = fogWorld();
  return { ...world, parts: world.parts.map((part): Part => ({ ...part, faults: [] })) };
})();

/** The fog scene without its faults. */
export const soundWorld = (): World => bare;

/** Where a part of this kind would hang on the second pole. */
const formOf = (kind: string): Part => {
  const { mounting } = componentKind(kind);
  const h = 10.36;
  const pole = bare.parts.find(({ id }) => id === 'p2.pole') as Part;
  const [x, y] = pole.at;
  const hung = (mounting ?? {}) as { readonly belowM?: number; readonly aboveM?: number; readonly outM?: number };
  const out = hung.outM ?? 0;
  const z = hung.aboveM ?? h - (hung.belowM ?? 3.2);
  return partForm({
    id: 'p2.extra',
    kind,
    owner: { pole: 'p2' },
    where: 'pole 2',
    at: [x + out, y, z],
    azimuth: Math.PI / 2,
  });
};

const spanLike = ['-span', '-neutral', 'cable', '-drop'];

/** The part of the kind in that World: one that is there, or one put in its place. */
export const partOfKind = (kind: string): Part => {
  const there = bare.parts.find((part) => part.kind === kind);
  if (there) return there;
  const made = formOf(kind);
  if (!spanLike.some((tail) => kind.endsWith(tail))) return made;
  const span = bare.parts.find(({ id }) => id === 's1.phase') as Part;
  return {
    ...made,
    id: 's9.extra',
    pole: null,
    at: span.at,
    end: span.end,
    nets: { ...made.nets, a: 'n9.a', b: 'n9.b' },
  };
};

/** A fault of a kind as laid on a part, on a side. */
export const laid = (kind: string, side: Side = 'road'): LaidFault => ({
  id: 'laid',
  kind,
  side,
  to: null,
  values: Object.fromEntries(Object.entries(faultKind(kind).values).map(([name, value]) => [name, value.default])),
});

/** The World with this part in it. */
export const worldWith = (part: Part): World => {
  const guy = bare.parts.some((p) => p.pole === 'p2' && p.kind === 'guy');
  const pole = bare.parts.find(({ id }) => id === 'p2.pole') as Part;
  const strand = partForm({
    id: 'p2.guy',
    kind: 'guy',
    owner: { pole: 'p2' },
    where: 'pole 2',
    at: [pole.at[0], pole.at[1], 10.16],
    end: [pole.at[0] + 6, pole.at[1], 0],
  });
  const others = bare.parts.filter(({ id }) => id !== part.id);
  return {
    ...bare,
    parts: [...others, ...(guy || part.id === strand.id ? [] : [strand]), part].sort((p, q) => (p.id < q.id ? -1 : 1)),
  };
};
