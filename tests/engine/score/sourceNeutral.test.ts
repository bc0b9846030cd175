/** The neutral open toward the substation is out of sight: what finds it is a reading that a whole neutral would not give. */
import { expect, it } from 'vitest';
import type { Act, Replay } from '../../../src/engine/acts/types.ts';
import { judgeFindings } from '../../../src/engine/score/judgeFindings.ts';
import { laidIn, perceived } from '../../../src/engine/score/known.ts';
import type { World } from '../../../src/engine/world/types.ts';
import { acknowledge, find, go, park, secondary } from '../../logs/shorthand.ts';
import { textOf } from '../catalogue/bench.ts';
import { built } from '../world/shuffled.ts';
import { fresh, goOn } from './logs.ts';

const scene = (kind: string, load = '{ leg-1: 6 kW, leg-2: 4 kW, both: 9 kW }'): World =>
  built(
    textOf({ kind, on: kind === 'source-neutral-open' ? 'p1.source' : 'p2.tie', load }).replace(
      '\nfaults:',
      '\n  - { id: tester-1, kind: low-voltage-tester, rated: 600 V }\nfaults:',
    ),
  );

const toButt: readonly Act[] = [acknowledge, park('clear'), go('p2.butt')];
const call = find('p1.source', 'open-neutral');

const judged = (replay: Replay) =>
  judgeFindings(
    replay,
    laidIn(replay.start).filter(({ fault }) => fault.id === 'it'),
  ).map(({ outcome }) => outcome);

it('called after a reading of the pole ground it is found, before it is a guess', () => {
  const begun = fresh(scene('source-neutral-open'));
  expect(judged(goOn(begun, ...toButt, call))).toEqual(['not-perceivable']);
  const read = goOn(begun, ...toButt, ...secondary('p2.ground-lead/low'));
  expect(read.end.knowledge.readings.at(-1)).toMatchObject({ shows: 'voltage' });
  expect(judged(goOn(read, call))).toEqual(['hit']);
});

it('a reading that a whole neutral gives as well tells nothing of it', () => {
  const [laid] = laidIn(scene('source-neutral-open'));
  if (laid === undefined) throw new Error('nothing is laid');
  const read = goOn(
    fresh(scene('source-neutral-open')),
    acknowledge,
    park('clear'),
    go('a.yard'),
    ...secondary('a.meter/line1'),
  );
  expect(read.end.knowledge.readings.at(-1)).toMatchObject({ shows: 'voltage' });
  expect(perceived(read.end, read, laid)).toBe(false);
});

it('where the neutral is whole the call is false', () => {
  const read = goOn(fresh(scene('tie-broken')), ...toButt, ...secondary('p2.ground-lead/low'));
  expect(judged(goOn(read, call))).toEqual(['false-call']);
});
