// @vitest-environment happy-dom
/** The sheets: nothing diagnoses before it is called, completion waits for three letters, keys reach everything. */
import { beforeEach, describe, expect, test, vi } from 'vitest';
import { faultKind } from '../../src/engine/catalogue/faults.ts';
import { faultsOf } from '../../src/engine/world/edit.ts';
import type { Playing } from '../../src/screens/types.ts';
import { type MadeDesk, makeDesk } from '../app/makeDesk.ts';
import { quarryRoad } from '../app/quarryRoad.ts';
import { button, doing, press, show, type } from './show.tsx';

let made: MadeDesk;
let root: HTMLElement;

beforeEach(() => {
  made = makeDesk(quarryRoad);
  root = show(made.desk);
});

const toScene = (): Playing => {
  doing(() => button(root, /^Take this drill/).click());
  doing(() => button(root, 'Acknowledge the call').click());
  doing(() => button(root, 'Park outside the fall line').click());
  return made.playing();
};

const input = (id: string): HTMLInputElement => {
  const label = [...root.querySelectorAll('label')].find((each) => each.textContent === id);
  return document.getElementById(label?.htmlFor ?? '') as HTMLInputElement;
};
const options = (): string[] => [...root.querySelectorAll('[role="option"]')].map((el) => el.textContent ?? '');

describe('the start sheet', () => {
  test('shows the caution, the drill with what it teaches, and no door that leads nowhere', () => {
    expect(root.textContent).toContain('Training aid only.');
    expect(root.textContent).toContain(quarryRoad.offered[0]?.scenario.teaches);
    expect([...root.querySelectorAll('h2')].map((el) => el.textContent)).toEqual([
      'Take a drill',
      'Open a saved log',
      'Beside the drills',
      'Settings',
      'Judging',
    ]);
  });

  test.each([
    ['One-line bench', 'One-line bench'],
    ['Reference cards', 'Reference cards'],
    ['Qualification report', 'Qualification report'],
  ])('opens %s and comes back', async (label, title) => {
    doing(() => button(root, label).click());
    await vi.waitFor(() => expect(root.querySelector('h1')?.textContent).toBe(title), { timeout: 15_000 });
    doing(() => button(root, 'Back to the start').click());
    expect(root.querySelector('h1')?.textContent).toBe('Loose Tie');
  });
});

describe('the call', () => {
  test('tells who called, what they said, the history and what is on the truck, and drives off once acknowledged', () => {
    doing(() => button(root, /^Take this drill/).click());
    for (const words of ['the radio has hissed', '11 days ago, fog', 'Feeder 4271', 'voltage detector 2', '05:52']) {
      expect(root.textContent).toContain(words);
    }
    expect(root.textContent).not.toContain('Park outside');
    doing(() => button(root, 'Acknowledge the call').click());
    expect(root.textContent).toContain('Park outside the fall line');
  });

  test('says visibility in the units of the settings', () => {
    doing(() => button(root, /^Take this drill/).click());
    expect(root.textContent).toContain('520 ft');
    doing(() => {
      made.desk.settings.value = { ...made.desk.settings.value, units: 'metric' };
    });
    expect(root.textContent).toContain('160 m');
  });
});

describe('on scene', () => {
  test('no fault is named and no test date is told before the trainee has called or read it', () => {
    const { snapshot } = toScene();
    doing(() => button(root, 'Acts').click());
    const text = document.body.innerHTML.toLowerCase();
    for (const { fault } of faultsOf(snapshot.value.world)) {
      expect(text).not.toContain(faultKind(fault.kind).name.toLowerCase());
      expect(text).not.toContain(`"${fault.id}"`);
    }
    expect(text).not.toContain('2024-05-20');
  });

  test('every part with something to see stands in the list once, healthy or not, and none twice', () => {
    const { snapshot } = toScene();
    const ids = [...root.querySelectorAll<HTMLElement>('[role="group"] [data-id]')].map((el) => el.dataset.id ?? '');
    expect(new Set(ids).size).toBe(ids.length);
    for (const id of ['p2.insulator', 'p1.insulator', 'p2.tie', 'p1.tie', 'p2.ground-bond', 'p3.ground-bond']) {
      expect(ids).toContain(id);
    }
    expect(snapshot.value.world.knowledge.looks.filter(({ part }) => part === 'p1.tie')).toEqual([]);
  });

  test('choosing a part in the list by keys logs the look and shows its neutral lines', () => {
    const playing = toScene();
    const item = root.querySelector('[data-id="p2.insulator"]') as HTMLElement;
    press(item, 'Enter');
    expect(playing.snapshot.value.log.entries.at(-1)?.act).toEqual({ act: 'look', part: 'p2.insulator', aid: 'eyes' });
    const lines = [...root.querySelectorAll('.lines li')].map((el) => el.textContent);
    expect(lines).toEqual(playing.drill.look('p2.insulator', 'eyes').lines);
  });

  test('arrows move in the list one item at a time and exactly one item takes the tab', () => {
    toScene();
    const first = document.getElementById('list-first') as HTMLElement;
    doing(() => first.focus());
    press(first, 'ArrowDown');
    expect((document.activeElement as HTMLElement).dataset.id).toMatch(/^p1\./);
    expect(root.querySelectorAll('[role="treeitem"][tabindex="0"]')).toHaveLength(1);
    press(document.activeElement as HTMLElement, 'ArrowLeft');
    expect(document.activeElement).toBe(first);
    press(first, 'ArrowLeft');
    expect(first.getAttribute('aria-expanded')).toBe('false');
  });

  test('the letters open the pages, again they fold the sheet, and typing in a field is left alone', () => {
    const playing = toScene();
    press(document.body, 'b');
    expect(playing.page.value).toBe('briefing');
    press(document.body, 'b');
    expect(playing.sheetOpen.value).toBe(false);
    press(document.body, 'a');
    press(input('Find an act'), 'c');
    expect(playing.page.value).toBe('acts');
    press(document.body, '3');
    expect(playing.aid.value).toBe('glass');
  });

  test('letters do nothing once they are switched off, but the keys sheet still opens', () => {
    const playing = toScene();
    doing(() => {
      made.desk.settings.value = { ...made.desk.settings.value, letterKeys: false };
    });
    press(document.body, 'b');
    expect(playing.page.value).toBe('findings');
    press(document.body, '?');
    expect(playing.dialog.value).toBe('keys');
  });

  test('handing over is asked once and ends in the debrief', () => {
    const playing = toScene();
    press(document.body, 'h');
    doing(() => button(root, 'Hand over').click());
    expect(playing.snapshot.value.world.ended).toBe('handed-over');
    expect(root.querySelector('.debrief h1')?.textContent).toBe('Fog on Quarry Road');
  });
});

describe('calling a finding', () => {
  const callOn = (id: string): void => {
    toScene();
    press(root.querySelector(`[data-id="${id}"]`) as HTMLElement, 'Enter');
    doing(() => button(root.querySelector('.part-card') as HTMLElement, 'Call a finding').click());
  };

  test('offers nothing before three letters and then the list of such a part, healthy words too', () => {
    callOn('p2.insulator');
    type(input('Condition'), 'cr');
    expect(options()).toEqual([]);
    type(input('Condition'), 'cra');
    expect(options()).toContain('porcelain cracked');
    type(input('Condition'), 'sou');
    expect(options()).toEqual(['sound, nothing wrong']);
  });

  test('takes the option by arrows and Enter and writes it on the sheet', () => {
    callOn('p2.insulator');
    type(input('Condition'), 'cra');
    press(input('Condition'), 'ArrowDown');
    press(input('Condition'), 'Enter');
    doing(() => button(root, 'Write it down').click());
    expect(made.playing().snapshot.value.world.paper.findings).toMatchObject([
      { on: 'p2.insulator', condition: 'cracked', confidence: null },
    ]);
  });

  test('calls something missing on any part, and gives no other answer to a right than to a wrong call', () => {
    const said: string[] = [];
    for (const id of ['p2.insulator', 'p1.insulator']) {
      callOn(id);
      type(input('Condition'), 'cracked');
      press(input('Condition'), 'Enter');
      doing(() => button(root, 'Write it down').click());
      said.push(root.querySelector('.last')?.textContent ?? '');
      made = makeDesk(quarryRoad);
      root = show(made.desk);
    }
    expect(said[0]).toBe(said[1]);
    callOn('p3.tag');
    type(input('Condition'), 'mis');
    expect(options()).toContain('missing');
  });

  test('is withdrawn and changed on the findings page', () => {
    callOn('p2.insulator');
    type(input('Condition'), 'cracked');
    press(input('Condition'), 'Enter');
    doing(() => button(root, 'Write it down').click());
    const page = root.querySelector('#page') as HTMLElement;
    doing(() => button(page, /^Change/).click());
    type(input('Condition'), 'chipped');
    press(input('Condition'), 'Enter');
    doing(() => button(page, 'Write it down').click());
    expect(made.playing().snapshot.value.world.paper.findings.map(({ condition }) => condition)).toEqual(['chipped']);
    doing(() => button(page, /^Withdraw/).click());
    expect(made.playing().snapshot.value.world.paper.findings).toEqual([]);
  });
});

describe('the acts', () => {
  test('a search shows every act of any tool with its words', () => {
    const playing = toScene();
    doing(() => button(root, 'Acts').click());
    type(input('Find an act'), 'e');
    const shown = root.querySelectorAll('.act').length;
    expect(shown).toBe(playing.drill.offers().filter(({ label }) => label.includes('e')).length);
    type(input('Find an act'), 'self-test');
    const labels = [...root.querySelectorAll('.act span:first-child')].map((el) => el.textContent ?? '');
    expect(labels.length).toBeGreaterThan(1);
    for (const label of labels) expect(label.toLowerCase()).toContain('self-test');
  });

  test('by stick one takes the stick, what goes on it, and then the end of a part', () => {
    const playing = toScene();
    doing(() => button(root, 'Acts').click());
    const before = root.querySelectorAll('.act').length;
    expect(before).toBeLessThan(100);
    doing(() => button(root, 'Extension stick 1').click());
    doing(() => button(root, 'Voltage detector 2').click());
    doing(() => button(root, /^Test the top contact of the fused cutout, pole QR-14/).click());
    expect(playing.snapshot.value.log.entries.at(-1)?.act).toEqual({
      act: 'test',
      point: 'p2.cutout/top',
      tool: 'detector-2',
      stick: 'stick-1',
    });
  });

  test('a set of clamps goes on in the order in which its clamps were chosen', () => {
    const playing = toScene();
    doing(() => button(root, 'Acts').click());
    doing(() => button(root, 'Extension stick 1').click());
    doing(() => button(root, 'Ground set 1').click());
    const choose = (index: number): string => {
      const select = root.querySelectorAll<HTMLSelectElement>('.clamps select')[index] as HTMLSelectElement;
      const value = select.options[1]?.value ?? '';
      doing(() => {
        select.value = value;
        select.dispatchEvent(new Event('change', { bubbles: true }));
      });
      return value;
    };
    expect(button(root, /^Put the clamps on/).disabled).toBe(true);
    const points = [choose(0), choose(1)];
    doing(() => button(root, /^Put the clamps on/).click());
    expect(playing.snapshot.value.world.jumpers).toMatchObject([{ tool: 'ground-1', points }]);
  });

  test('a tool tells its test date on the sheet once its tag was read, and not before', () => {
    const playing = toScene();
    doing(() => button(root, 'Acts').click());
    expect(root.querySelector('.tag')).toBeNull();
    doing(() => playing.send({ act: 'check-tool', tool: 'stick-2', check: 'read-tag' }));
    expect(root.querySelector('.tag')?.textContent).toContain('2024-05-20');
  });

  test('a refused act says why where everybody sees it', () => {
    const playing = toScene();
    doing(() => playing.send({ act: 'engine', on: true }));
    expect(root.querySelector('[aria-live] .refused')?.textContent).toBe('Not possible: the engine is on already.');
  });
});

describe('the briefing', () => {
  test('carries findings over, takes a control for each, and may be held empty', () => {
    const playing = toScene();
    doing(() => playing.send({ act: 'call-finding', on: 'p2.tie', condition: 'tie-broken' }));
    doing(() => button(root, 'Briefing').click());
    const carried = root.querySelector('.carried') as HTMLElement;
    expect(carried.textContent).toContain('Conductor tie, pole QR-14: tie broken or leg missing');
    const choose = (of: string, value: string): void =>
      doing(() => {
        const select = carried.querySelector<HTMLSelectElement>(`${of} select`) as HTMLSelectElement;
        select.value = value;
        select.dispatchEvent(new Event('change', { bubbles: true }));
      });
    choose('.can-do', 'drop');
    choose('.control', 'support-conductor');
    doing(() => button(carried, /^Add/).click());
    expect(playing.snapshot.value.world.paper.plans).toMatchObject([
      { finding: 'f1', control: 'support-conductor', by: 'trainee', harm: 'drop' },
    ]);
    expect(carried.textContent).toContain('Against a conductor or part coming down');
  });
});

describe('a mistake in the program', () => {
  test('shows what happened, hands the log out, and hides nothing of the drill', () => {
    const told = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const playing = toScene();
    Object.assign(playing.drill, {
      offers: () => {
        throw new Error('no such thing');
      },
    });
    doing(() => playing.send({ act: 'listen' }));
    expect(root.querySelector('[role="alert"]')?.textContent).toContain('“no such thing”');
    doing(() => button(root, 'Save the log as a file').click());
    expect(JSON.parse(made.files[0]?.text ?? '').entries).toHaveLength(3);
    expect(told).toHaveBeenCalledOnce();
    told.mockRestore();
  });
});

describe('the settings', () => {
  test('keep volume and brightness on the device, and take nothing beyond their ends', async () => {
    const { settingsFrom } = await import('../../src/screens/settings.ts');
    const volume = [...root.querySelectorAll('label.range')].find((each) => each.textContent?.startsWith('Volume'));
    type(volume?.querySelector('input') as HTMLInputElement, '0.3');
    expect(made.desk.settings.value.volume).toBe(0.3);
    const brightness = [...root.querySelectorAll('label.range')].find((each) => each.textContent?.startsWith('Bright'));
    type(brightness?.querySelector('input') as HTMLInputElement, '1.6');
    expect(settingsFrom(JSON.stringify(made.desk.settings.value), false)).toMatchObject({
      volume: 0.3,
      brightness: 1.6,
    });
    expect(settingsFrom('{"volume":9,"brightness":40}', false)).toMatchObject({ volume: 0.8, brightness: 1 });
  });
});
