// @vitest-environment happy-dom
/** The bench on the page: by pointer, by keys alone, and by the lists. */
import { render } from 'preact';
import { act } from 'preact/test-utils';
import { beforeEach, describe, expect, test } from 'vitest';
import { pointWords } from '../../../src/engine/acts/pointWords.ts';
import { settle } from '../../../src/engine/circuit/settle.ts';
import { solveCircuit } from '../../../src/engine/circuit/solveCircuit.ts';
import { partById, withPart } from '../../../src/engine/world/edit.ts';
import { BenchPage } from '../../../src/screens/bench/BenchPage.tsx';
import { ampsOf, voltsOf } from '../../../src/screens/bench/benchWords.ts';
import { boltedFault } from '../../../src/screens/bench/faultWords.ts';
import { button, doing, press } from '../show.tsx';
import { offered, quarryRoad, worldOf } from './scene.ts';

const start = worldOf(quarryRoad);
let root: HTMLElement;
let left = 0;

const show = (): void => {
  document.body.innerHTML = '<div id="app"></div>';
  root = document.getElementById('app') as HTMLElement;
  act(() => render(<BenchPage scenarios={[quarryRoad]} back={() => (left += 1)} />, root));
};
beforeEach(show);

const inDrawing = (selector: string): HTMLElement => {
  const found = root.querySelector<HTMLElement>(`.diagram-wide ${selector}`);
  if (!found) throw new Error(`nothing at ${selector}`);
  return found;
};
const click = (el: Element): void => doing(() => void el.dispatchEvent(new MouseEvent('click', { bubbles: true })));
const volts = (bus: string): string => inDrawing(`[data-bus="${bus}"] .volts`).textContent?.trim() ?? '';
const row = (point: string): string[] =>
  [...(root.querySelector(`[data-point="${point}"]`)?.children ?? [])].map((cell) => cell.textContent ?? '');

describe('the one-line bench', () => {
  test('shows volts, live or not in words, and who holds it alive', () => {
    expect(volts('p2.phase')).toBe(voltsOf(solveCircuit(start).point('p2.insulator/conductor').volts));
    expect(inDrawing('[data-bus="p2.phase"]').getAttribute('aria-label')).toMatch(
      /^7\.08 kV live B: Phase, pole QR-14, a touch draws/,
    );
    expect(inDrawing('[data-bus="p2.neutral"]').getAttribute('aria-label')).toContain('not live');
    expect(root.textContent).toContain('worst angle');
  });

  test('a click on a device turns it, and the readings are those of the circuit solved with it so', () => {
    click(inDrawing('[data-part="a.meter"]'));
    const direct = solveCircuit(
      withPart(start, 'a.meter', { state: { ...partById(start, 'a.meter').state, position: 'pulled' } }),
    );
    expect(row('p2.transformer/h1')[1]).toBe(voltsOf(direct.point('p2.transformer/h1').volts));
    expect(volts('a.m1')).toBe(voltsOf(direct.point('a.meter/load1').volts));
    expect(inDrawing('[data-bus="p2.phase"]').getAttribute('aria-label')).toContain('not live');
    expect(root.querySelector('[role="status"]')?.textContent).toBe('Meter, first house: pulled.');
  });

  test('closing into what trips a device says so and shows the device open', () => {
    click(inDrawing('[data-part="p1.tap-cutout"]'));
    const direct = settle(withPart(start, 'p1.tap-cutout', { state: { position: 'closed', link: 'sound' } }));
    expect(direct.operations.map(({ part }) => part)).toEqual(['a.generator']);
    expect(root.querySelector('[role="status"]')?.textContent).toContain('Operated Engine set, first house');
    doing(() => button(root, 'One step back').click());
    expect(volts('p2.phase')).toBe(voltsOf(solveCircuit(start).point('p2.insulator/conductor').volts));
  });

  test('takes one tab; arrows move to the nearest thing, Enter turns a device, a space chooses a bar', () => {
    const tabs = root.querySelectorAll('.diagram-wide [role="button"][tabindex="0"]');
    expect(tabs).toHaveLength(1);
    const cutout = inDrawing('[data-part="p2.cutout"]');
    doing(() => cutout.focus());
    press(cutout, 'ArrowUp');
    expect(document.activeElement?.getAttribute('data-bus')).toBe('p2.top');
    expect(root.querySelectorAll('.diagram-wide [role="button"][tabindex="0"]')).toHaveLength(1);
    press(document.activeElement as Element, ' ');
    expect(root.querySelector('.bench-strip h2')?.textContent).toBe('Top contact of the fused cutout, pole QR-14');
    press(document.activeElement as Element, 'ArrowDown');
    press(inDrawing('[data-part="p2.cutout"]'), 'Enter');
    expect(inDrawing('[data-part="p2.cutout"]').getAttribute('aria-label')).toContain('open');
  });

  test('by arrows alone everything in the drawing can be reached', () => {
    const all = [...root.querySelectorAll<HTMLElement>('.diagram-wide [role="button"]')];
    const seen = new Set<Element>();
    const visit = [all[0] as HTMLElement];
    for (let here = visit.pop(); here !== undefined; here = visit.pop()) {
      if (seen.has(here)) continue;
      seen.add(here);
      for (const key of ['ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight']) {
        here.focus();
        here.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }));
        visit.push(document.activeElement as HTMLElement);
      }
    }
    expect(all.filter((each) => !seen.has(each)).map((each) => each.getAttribute('aria-label'))).toEqual([]);
  });

  test('a ground goes on from bar to bar, shows at both, and comes off', () => {
    click(inDrawing('[data-bus="p2.neutral"]'));
    doing(() => button(root, 'Begin a ground or short here').click());
    expect(root.querySelector('.bench-strip .notice')?.textContent).toContain('Choose where the other goes');
    click(inDrawing('[data-bus="p2.phase"]'));
    doing(() => button(root, 'Second clamp here').click());
    expect(inDrawing('[data-bus="p2.phase"]').querySelector('.flag')).not.toBeNull();
    expect(inDrawing('[data-bus="p2.neutral"]').querySelector('.flag')).not.toBeNull();
    expect(inDrawing('[data-bus="p2.phase"]').getAttribute('aria-label')).toContain('not live');
    doing(() => button(root, 'Take ground 1 off').click());
    expect(root.querySelector('.flag')).toBeNull();
  });

  test('the lists do it all without the drawing: positions, repairs, grounds', () => {
    const device = (id: string): HTMLElement => root.querySelector(`[data-device="${id}"]`) as HTMLElement;
    doing(() => button(device('a.generator'), /^stopped/).click());
    expect(row('p2.transformer/h1')[2]).toBe('not live');
    doing(() => button(device('a.generator'), /^running/).click());
    expect(row('p2.ground-lead/low')[2]).toContain('live: the engine set, first house');
    doing(() => button(device('p2.insulator'), /^Mend it/).click());
    expect(row('p2.ground-lead/low')[2]).toBe('not live');
    const [from, to] = root.querySelectorAll<HTMLSelectElement>('.join select');
    for (const [select, value] of [
      [from, 'p2.neutral-spool/neutral'],
      [to, 'p2.clamp/line'],
    ] as const) {
      doing(() => {
        if (select) select.value = value;
        select?.dispatchEvent(new Event('change', { bubbles: true }));
      });
    }
    doing(() => button(root, 'Put it on').click());
    expect(root.querySelector('.grounds')?.textContent).toContain(
      `${pointWords(start, 'p2.neutral-spool/neutral')} to`,
    );
    expect(row('p2.transformer/h1')[2]).toBe('not live');
  });

  test('two clamps on one metal are refused in words before they can be put on', () => {
    const [from, to] = root.querySelectorAll<HTMLSelectElement>('.join select');
    for (const [select, value] of [
      [from, 'p2.insulator/conductor'],
      [to, 'p2.clamp/line'],
    ] as const) {
      doing(() => {
        if (select) select.value = value;
        select?.dispatchEvent(new Event('change', { bubbles: true }));
      });
    }
    expect(button(root, 'Put it on').disabled).toBe(true);
    expect(root.textContent).toContain('Both clamps would sit on the same metal');
  });

  test('every point with bare metal stands in the table, live in words', () => {
    const { points } = solveCircuit(start);
    expect([...root.querySelectorAll('[data-point]')].map((el) => el.getAttribute('data-point')).sort()).toEqual(
      points.map(({ point }) => point),
    );
    for (const state of points) expect(row(state.point)[2]?.startsWith('live')).toBe(state.live);
  });

  test('says of every point what a bolted fault to its neutral drives', () => {
    expect(row('p1.tap-cutout/top')[5]).toBe('850 A');
    const amperes = boltedFault(start, 'p2.transformer/h1');
    expect(row('p2.transformer/h1')[5]).toBe(ampsOf(amperes ?? Number.NaN));
    expect(row('p2.neutral-spool/neutral')[5]).toBe('the neutral itself');
    click(inDrawing('[data-bus="p1.main"]'));
    expect(root.querySelector('.chosen-thing .reading')?.textContent).toContain('to the neutral drives 850 A');
  });

  test('goes back when asked, and says what to do without scenarios', () => {
    left = 0;
    doing(() => button(root, 'Back to the start').click());
    expect(left).toBe(1);
    act(() => render(<BenchPage scenarios={[]} back={() => undefined} />, root));
    expect(root.textContent).toContain('No scenario can be read.');
  });

  test.each(offered.map((each) => [each.scenario.id, each] as const))('opens %s', (_, each) => {
    act(() => render(<BenchPage key={each.hash} scenarios={[each]} back={() => undefined} />, root));
    expect(root.querySelectorAll('.one-line [data-bus]').length).toBeGreaterThan(3);
  });
});
