/** Taking stick and tool first hides no act: by some choice each one on offer is reached. */
import { describe, expect, test } from 'vitest';
import type { OfferedAct } from '../../src/engine/acts/types.ts';
import { doneWith, heldOf, labelInHand, nextClamps, sticksIn, toolsIn } from '../../src/screens/sheet/inHand.ts';
import { makeDesk } from '../app/makeDesk.ts';
import { quarryRoad } from '../app/quarryRoad.ts';

const at = (stand: string) => {
  const playing = makeDesk(quarryRoad).take();
  playing.send({ act: 'acknowledge' });
  playing.send({ act: 'park', at: 'clear' });
  playing.send({ act: 'go', to: stand });
  const of = (by: OfferedAct['by']): readonly OfferedAct[] => playing.drill.offers().filter((each) => each.by === by);
  return { world: playing.snapshot.value.world, stick: of('stick'), hands: of('hands') };
};

describe.each(['p1.butt', 'p2.butt', 'a.yard'])('what is taken in the hand at %s', (stand) => {
  const { stick, hands } = at(stand);

  test('leads to every act by stick, each once', () => {
    const reached = sticksIn(stick).flatMap((one) => toolsIn(stick).flatMap((tool) => doneWith(stick, one, tool)));
    expect(reached).toHaveLength(stick.length);
    expect(new Set(reached)).toEqual(new Set(stick));
  });

  test('leads to every act by hand, each once', () => {
    const reached = toolsIn(hands).flatMap((tool) => doneWith(hands, null, tool));
    expect(reached).toHaveLength(hands.length);
    expect(new Set(reached)).toEqual(new Set(hands));
  });

  test('leaves a few acts of a stick and detector, and a rejected detector among them', () => {
    if (stick.length === 0) return;
    expect(doneWith(stick, 'stick-1', 'detector-2').length).toBeGreaterThan(0);
    expect(doneWith(stick, 'stick-1', 'detector-1').length).toBeLessThan(stick.length / 3);
  });

  test('clamp after clamp comes to every way of putting a set on', () => {
    const lists = stick.flatMap(({ act }) => (act.act === 'ground' ? [act.points] : []));
    const walk = (on: readonly string[]): readonly (readonly string[])[] => [
      ...(lists.some((points) => points.join() === on.join()) ? [on] : []),
      ...nextClamps(lists, on).flatMap((next) => walk([...on, next])),
    ];
    const ways = new Set(walk([]).map((points) => points.join()));
    expect(ways).toEqual(new Set(lists.map((points) => points.join())));
  });
});

describe('what is in the hand', () => {
  test('is nothing at first, and a tool that is no longer on offer is laid down', () => {
    const { stick } = at('p1.butt');
    const none = { stick: null, onStick: null, inHand: null };
    expect(heldOf('stick', none, stick)).toEqual(none);
    expect(heldOf('stick', { ...none, stick: 'stick-1', onStick: 'ground-9' }, stick)).toEqual({
      ...none,
      stick: 'stick-1',
    });
  });

  test('is not said again in the label of the act', () => {
    const { world, stick } = at('p1.butt');
    const operate = stick.find(({ act }) => act.act === 'operate');
    expect(operate?.label).toContain('with extension stick');
    expect(labelInHand(world, operate as OfferedAct)).not.toContain('stick');
  });
});
