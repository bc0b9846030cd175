/** Standing points of a scene: round each pole, in each yard, and aloft where there is work. */
import type { Scenario, ScenarioPole } from '../scenario/types.ts';
import { heightOf } from './poleParts.ts';
import { yardOf } from './premisesParts.ts';
import type { Stand } from './types.ts';

/** Eye above the feet and an arm from the shoulder, metres (usual anthropometric figures, from memory). */
const EYE = 1.65;
const ARM = 0.75;
/** Aloft the worker shifts on the pole or in the bucket (estimate). */
const ALOFT = 1.7;
/** Feet below the roof: clear of the approach distance to what hangs there, and at the work. */
const BELOW = 4.6;
const WORK = 1.9;

const poleStands = (pole: ScenarioPole): readonly Stand[] => {
  const { id, x, y, number } = pole;
  const h = heightOf(pole);
  const stand = (name: string, words: string, feet: Stand['feet'], aloft: Stand['aloft'] = null): Stand => ({
    id: `${id}.${name}`,
    name: `${words}, pole ${number}`,
    feet,
    eye: EYE,
    aloft,
    reachM: aloft === null ? ARM : ALOFT,
    near: id,
  });
  return [
    stand('road', 'road side', [x - 3, y - 9, 0]),
    stand('butt', 'at the butt', [x + 1, y - 0.1, 0]),
    stand('field', 'field side', [x + 2, y + 8, 0]),
    stand('aloft', 'up the pole, below the work', [x - 0.3, y - 0.25, h - BELOW], { pole: id, zone: 'below' }),
    stand('work', 'up the pole, at the work', [x - 0.3, y - 0.25, h - WORK], { pole: id, zone: 'work' }),
  ];
};

/** All standing points, sorted by id. */
export const standsOf = (scenario: Scenario): readonly Stand[] =>
  [
    ...scenario.poles.flatMap(poleStands),
    ...scenario.premises.map((premises): Stand => {
      const pole = scenario.poles.find(({ id }) => id === premises.from);
      if (pole === undefined) throw new Error(`no pole ${premises.from}`);
      return {
        id: `${premises.id}.yard`,
        name: `yard of the ${premises.name}`,
        feet: yardOf(premises, pole),
        eye: EYE,
        aloft: null,
        reachM: ARM,
        near: premises.id,
      };
    }),
  ].sort((a, b) => (a.id < b.id ? -1 : 1));
