/** Plays acts in the page as a person would: every act by the sheet, list or menu that is meant for it. */
import type { Page } from 'playwright-core';
import type { Drill } from '../../src/drill/types.ts';
import type { Act, Log, OfferedAct } from '../../src/engine/acts/types.ts';
import { condition } from '../../src/engine/catalogue/conditions.ts';
import { briefingTopics } from '../../src/engine/catalogue/controls.ts';
import { findPart } from '../../src/engine/world/edit.ts';
import { reaches } from '../../src/screens/sheet/actGroups.ts';
import { nameOf } from '../../src/screens/words.ts';
import type { Hand } from './hands.ts';
import { mirrorOf, offerOf } from './mirror.ts';

export const keptLog = (page: Page): Promise<Log | null> =>
  page.evaluate(() => JSON.parse(localStorage.getItem('loose-tie.drill') ?? 'null'));

/** Waits until the page's log holds so many acts. */
const logged = (page: Page, acts: number): Promise<unknown> =>
  page.waitForFunction(
    (wanted) => JSON.parse(localStorage.getItem('loose-tie.drill') ?? '{"entries":[]}').entries.length === wanted,
    acts,
  );

const callFinding = async (hand: Hand, drill: Drill, on: string, what: string): Promise<void> => {
  const { world } = drill.snapshot();
  const { page } = hand;
  const label = condition(what).label;
  await hand.openPage('findings');
  await hand.press(page.locator('#findings-call'));
  const form = page.locator('#page .call-finding');
  await hand.write(form.getByRole('combobox', { name: 'On what' }), nameOf(world, on));
  await page.keyboard.press('Enter');
  await hand.write(form.getByRole('combobox', { name: 'Condition' }), label);
  await page.keyboard.press('Enter');
  await hand.press(form.getByRole('button', { name: 'Write it down' }));
};

const planControl = async (hand: Hand, drill: Drill, act: Extract<Act, { act: 'plan' }>): Promise<void> => {
  const { findings } = drill.snapshot().world.paper;
  await hand.openPage('briefing');
  const forms = hand.page.locator('.add-plan');
  const form = act.finding === null ? forms.last() : forms.nth(findings.findIndex(({ id }) => id === act.finding));
  if (act.harm !== undefined) await hand.choose(form.locator('.can-do select'), act.harm);
  await hand.choose(form.locator('.control select'), act.control);
  if (act.by !== 'trainee') await hand.choose(form.locator('.by select'), act.by);
  await hand.press(form.getByRole('button'));
};

const holdBriefing = async (hand: Hand, { topics, rescue }: Extract<Act, { act: 'brief' }>): Promise<void> => {
  await hand.openPage('briefing');
  const boxes = hand.page.locator('.hold input');
  const wanted = [...briefingTopics.map((topic) => topics.includes(topic)), rescue];
  for (const [index, on] of wanted.entries()) {
    if ((await boxes.nth(index).isChecked()) === on) continue;
    await hand.page.locator('.hold input').nth(index).scrollIntoViewIfNeeded();
    await hand.press(boxes.nth(index));
    if (!(await boxes.nth(index).isChecked())) await hand.page.keyboard.press(' ');
  }
  await hand.press(hand.page.locator('.hold').getByRole('button'));
};

const end = async (hand: Hand, act: 'hand-over' | 'close-out'): Promise<void> => {
  if (act === 'hand-over') await hand.press(hand.page.locator('.strip').getByRole('button', { name: 'Stop' }));
  else await fromActs(hand, { label: 'Close the call out', by: 'radio' });
  await hand.press(hand.page.locator('.slip button.primary'));
};

/** Unfolds every folder there. */
const unfold = async (hand: Hand, where: string): Promise<void> => {
  const folded = hand.page.locator(`${where} .folder:not([open]) > summary`);
  while ((await folded.count()) > 0) await hand.press(folded.first());
};

const fromActs = async (hand: Hand, { label, by }: Pick<OfferedAct, 'label' | 'by'>): Promise<void> => {
  await hand.openPage('acts');
  await hand.write(hand.page.locator('#act-filter'), label);
  // The same words may be said by telephone and at the door: the group tells them apart.
  const title = reaches.find(([reach]) => reach === by)?.[1] ?? by;
  const group = hand.page.locator('.reach').filter({ has: hand.page.locator('summary').filter({ hasText: title }) });
  const act = group.locator('.act').filter({ has: hand.page.getByText(label, { exact: true }) });
  await unfold(hand, '#page');
  await hand.press(act.first());
};

const aids = { eyes: 'Eyes', lamp: 'Lamp', glass: 'Glass' } as const;

const doAct = async (hand: Hand, drill: Drill, act: Act): Promise<void> => {
  const { page } = hand;
  switch (act.act) {
    case 'look': {
      const aid = page.locator('.aids').getByRole('button', { name: aids[act.aid] });
      if ((await aid.getAttribute('aria-pressed')) !== 'true') await hand.press(aid);
      return hand.point(act.part);
    }
    case 'go':
      return hand.walk(offerOf(drill, act).label.replace('Walk to: ', ''));
    case 'call-finding':
      return callFinding(hand, drill, act.on, act.condition);
    case 'plan':
      return planControl(hand, drill, act);
    case 'brief':
      return holdBriefing(hand, act);
    case 'hand-over':
    case 'close-out':
      return end(hand, act.act);
    default:
      return fromActs(hand, offerOf(drill, act));
  }
};

/** Acts on the call sheet are plain buttons. */
const onCall = async (hand: Hand, drill: Drill, act: Act): Promise<void> => {
  const target = hand.page.locator('.drive').getByRole('button', { name: offerOf(drill, act).label });
  if (!(await target.isVisible())) {
    await unfold(hand, '.drive');
  }
  await hand.press(target);
};

/** Takes the drill and plays the acts; answers the drill beside it, which the page's own log is held against. */
export const play = async (hand: Hand, acts: readonly Act[]): Promise<Drill> => {
  const { page } = hand;
  await hand.press(page.getByRole('button', { name: /^Take this drill ?: Fog on Quarry Road$/ }));
  await hand.press(page.getByRole('button', { name: 'Acknowledge the call' }));
  await logged(page, 1);
  const first = await keptLog(page);
  if (first === null) throw new Error('the page kept no log');
  const drill = mirrorOf(first);
  for (const act of acts.slice(1)) {
    const before = drill.snapshot();
    if (before.world.truck.place === 'arriving') await onCall(hand, drill, act);
    else await doAct(hand, drill, act);
    // Calling a finding on a part logs a look by eye first, unless it was looked at from here.
    if (act.act === 'call-finding' && needsLook(before, act.on)) drill.send({ act: 'look', part: act.on, aid: 'eyes' });
    drill.send(act);
    await logged(page, drill.snapshot().log.entries.length);
  }
  return drill;
};

const needsLook = ({ world, stand }: ReturnType<Drill['snapshot']>, on: string): boolean =>
  findPart(world, on) !== null && !world.knowledge.looks.some((look) => look.part === on && look.stand === stand);
