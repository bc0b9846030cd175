/** Pictures of the pole itself and what every one bears. Order of things and distances: FRAMING of a single-phase tap, common practice. */
import type { Part } from '../../engine/world/types.ts';
import { gearBodies } from './gear.ts';
import { armBodies } from './onArm.ts';
import { seedOf } from './shared.ts';
import { drawnState, drawnVariant } from './showsAs.ts';
import { conductor, field, groundSide, poleForm, road } from './support.ts';
import type { Around, Picture } from './types.ts';

/** What is bolted to a pole and has split it. */
const splitting = (part: Part, around: Around): Part | undefined =>
  around.world.parts.find((on) => on.pole === part.pole && drawnState(on, '', ['split-top']) !== '');

const pole: Picture = (part, around) => {
  const feet = Math.round((part.values.heightM ?? 10.36) / 0.3048 / 0.85 / 5) * 5;
  const text = `${part.words.class ?? '4'}-${feet}`;
  const turn = road + 0.5;
  const by = splitting(part, around);
  return [
    {
      spec: {
        kind: 'pole',
        state: by === undefined ? 'whole' : 'split-top',
        // One looks through the split from where what did it faces.
        size: { ...poleForm(part), ...(by === undefined ? {} : { split: by.azimuth - turn }) },
        side: turn,
        text,
        seed: seedOf(part.id),
      },
      at: part.at,
    },
  ];
};

const spool: Picture = (part, around) => [
  {
    spec: { kind: 'neutral-spool', variant: 'white', side: field, size: { conductor } },
    at: around.face(part.pole, field, part.at[2]),
  },
];

const tag: Picture = (part, around) => {
  const number = around.on(part.pole, 'pole')?.words.number ?? '';
  return [
    {
      spec: { kind: 'tag', side: road, text: number.replace('-', '|'), size: { width: 0.11, height: 0.17 } },
      at: around.face(part.pole, road, part.at[2], 0.002),
    },
  ];
};

const groundLead: Picture = (part, around) => {
  const base = around.on(part.pole, 'pole');
  const bond = around.on(part.pole, 'ground-bond');
  const top = (bond?.at[2] ?? 8.7) - 0.1;
  const state = drawnState(part, 'whole');
  const cut = state === 'cut';
  const covered = around.beside(part, 'moulding') === null ? 1.6 : 0;
  const parted: Record<string, number> =
    state === 'apart' ? { partedFrom: 1.85, partedTo: 1.97 } : cut ? { partedFrom: 0.14, partedTo: 1.7 } : {};
  return [
    {
      spec: {
        kind: 'pole-ground',
        variant: drawnVariant(part, 'copper'),
        side: groundSide,
        state: cut || state === 'apart' ? 'cut' : 'whole',
        size: { ...poleForm(base), top, moulding: cut ? 0 : covered, ...parted },
        seed: seedOf(part.id),
      },
      at: base?.at ?? part.at,
    },
  ];
};

/** Bodies of the kinds that a pole carries; they may not ask for points. */
export const poleBodies: Readonly<Record<string, Picture>> = {
  pole,
  'neutral-spool': spool,
  tag,
  'ground-lead': groundLead,
  ...armBodies,
  ...gearBodies,
};
