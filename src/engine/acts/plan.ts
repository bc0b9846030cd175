/** Planning a control on the briefing sheet, against a finding or against no named one. */
import { isControlKind } from '../catalogue/controls.ts';
import { nextId } from './finding.ts';
import { type ActKind, event, outcome } from './kind.ts';
import { onFoot } from './presence.ts';

export const plan: ActKind<'plan'> = {
  minutes: () => 0,
  refuse: (world, act) => {
    const away = onFoot(world);
    if (away) return away;
    if (act.finding !== null && !world.paper.findings.some(({ id }) => id === act.finding)) {
      return 'there is no such finding on the sheet';
    }
    if (!isControlKind(act.control)) return 'that is no control on the list';
    if (!world.people.some(({ id }) => id === act.by)) return 'there is no such person';
    const same = world.paper.plans.some(
      ({ finding, control, by, harm }) =>
        finding === act.finding && control === act.control && by === act.by && harm === act.harm,
    );
    return same ? 'that is planned already' : null;
  },
  apply: (world, act) => {
    const { plans } = world.paper;
    const { minute } = world.clock;
    const { finding, control, by, harm } = act;
    const entry = { id: nextId('c', plans), finding, control, by, minute, ...(harm === undefined ? {} : { harm }) };
    return outcome({ ...world, paper: { ...world.paper, plans: [...plans, entry] } }, [
      event('done', null, 'Written on the briefing sheet.'),
    ]);
  },
  offers: () => [],
};

export const withdrawPlan: ActKind<'withdraw-plan'> = {
  minutes: () => 0,
  refuse: (world, act) => (world.paper.plans.some(({ id }) => id === act.plan) ? null : 'there is no such plan'),
  apply: (world, act) =>
    outcome({ ...world, paper: { ...world.paper, plans: world.paper.plans.filter(({ id }) => id !== act.plan) } }, [
      event('done', null, 'Struck off the briefing sheet.'),
    ]),
  offers: (world) =>
    world.paper.plans.map((entry) => ({
      act: { act: 'withdraw-plan', plan: entry.id },
      label: `Strike planned control ${entry.id.slice(1)}`,
      by: 'paper',
      about: null,
    })),
};
